import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { milligrams } from '@/shared/units/stock-unit';

describe('mass and volume meet only through a density', () => {
  it('the result says that it was computed', () => {
    const resin = unwrap(gramsPerLitre(1100));
    expect(massToVolume(milligrams(1_100_000), resin)).toEqual({ amount: 1_000_000, computed: true, by: 'density' });
  });

  it('rounds half away from zero to the small unit', () => {
    const heavy = unwrap(gramsPerLitre(2000));
    expect([1, 2, 3, -1].map((amount) => massToVolume(milligrams(amount), heavy).amount)).toEqual([1, 1, 2, -1]);
  });

  it('a density is whole grams per litre from 200 to 20 000', () => {
    for (const fine of [200, 870, 20_000]) expect(gramsPerLitre(fine)).toEqual({ ok: true, value: fine });
    for (const bad of [199, 20_001, 0, -1, 1.1, Number.NaN]) {
      expect(gramsPerLitre(bad)).toEqual({
        ok: false,
        error: { code: 'density-out-of-range', least: 200, most: 20_000 },
      });
    }
  });

  it('weighs what it was computed from, but for the half microlitre lost by rounding: m = ρ V', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000_000 }), fc.integer({ min: 200, max: 20_000 }), (amount, grams) => {
        const density = unwrap(gramsPerLitre(grams));
        const weighs = (massToVolume(milligrams(amount), density).amount * grams) / 1000;
        expect(Math.abs(weighs - amount)).toBeLessThanOrEqual(grams / 2000 + 1e-3);
      }),
    );
  });
});
