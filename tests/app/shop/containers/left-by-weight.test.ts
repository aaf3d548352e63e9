import { describe, expect, it } from 'vitest';
import { sayLeftOf } from '@/app/(shop)/_parts/stock/say-left-of';
import { leftByWeight, sayWeighedLeft } from '@/app/(shop)/containers/left-by-weight';
import { weighSchema } from '@/app/(shop)/containers/schema';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';
import { microlitres, milligrams } from '@/shared/units/stock-unit';

const TODAY = '2026-11-25' as CalendarDate;
const TYPING = {
  today: TODAY,
  order: 'day-first' as const,
  prefer: 'metric' as const,
  currency: unwrap(readCurrency('USD')),
};

describe('what is left by weight', () => {
  const weigh = (gross: number, tare: number, unit: 'mg' | 'uL' | 'piece', density: number | null) =>
    leftByWeight({ gross: milligrams(gross), tare: milligrams(tare) }, unit, density);

  it('is the weight less the empty container', () => {
    expect(weigh(1_020_000, 180_000, 'mg', null)).toEqual({ ok: true, value: { left: 840_000, computed: false } });
    expect(weigh(180_000, 180_000, 'mg', null)).toEqual({ ok: true, value: { left: 0, computed: false } });
  });

  it('goes through the density for a volume, and says it is computed (V = m / ρ, NIST SP 811, Appendix B: 1 L is 1 dm³)', () => {
    expect(weigh(1_280_000, 180_000, 'uL', 1100)).toEqual({ ok: true, value: { left: 1_000_000, computed: true } });
  });

  it('is said as it will stand in the book, rounded the same way', () => {
    // 12.78 fl oz: the nearest tenth is 12.8, and that much is not there.
    const left = microlitres(377_950);
    const size = microlitres(473_176);
    const said = sayWeighedLeft({ left, computed: true }, 'uL', { prefer: 'imperial', density: 1100 });
    expect(said).toBe('Leaves 12.7 fl oz, computed from its density, 1100 g/L.');
    expect(said).toContain(sayLeftOf({ left, size, unit: 'uL' }, 'imperial').left);
  });

  it('is refused where it cannot be known', () => {
    expect(weigh(100_000, 180_000, 'mg', null)).toMatchObject({ error: { code: 'lighter-than-empty' } });
    expect(weigh(1_000_000, 180_000, 'uL', null)).toMatchObject({ error: { code: 'no-density' } });
    expect(weigh(1_000_000, 180_000, 'piece', 1100)).toMatchObject({ error: { code: 'counted-in-pieces' } });
  });

  it('is read from the typed text where it is written, with how it was found', () => {
    const read = (typed: object, unit: 'mg' | 'uL' = 'mg') =>
      weighSchema(TYPING, { unit, densityGramsPerLitre: 1100 }).safeParse({
        label: 'C4K7VMX',
        way: 'gross',
        left: '',
        gross: '',
        tare: '',
        why: '',
        ...typed,
      });
    expect(read({ gross: '1.02 kg', tare: '180 g' }).data).toEqual({
      label: 'C4K7VMX',
      left: 840_000,
      why: '1.02 kg with the container, 180 g empty',
    });
    expect(read({ gross: '1.28 kg', tare: '180 g' }, 'uL').data).toMatchObject({
      left: 1_000_000,
      why: expect.stringContaining('computed from 1100 g/L'),
    });
    expect(read({ way: 'left', left: '0 g' }).data).toMatchObject({ left: 0 });
    expect(read({ gross: '1.02', tare: '180 g' }).error?.issues[0]?.path).toEqual(['gross']);
    expect(read({ gross: '100 g', tare: '180 g' }).error?.issues[0]?.path).toEqual(['gross']);
    expect(read({ label: 'P4K7VMX', gross: '1 kg', tare: '1 g' }).success).toBe(false);
  });
});
