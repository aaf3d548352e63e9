import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inKeptUnit } from '@/shared/promise/in-kept-unit';
import { inUnit } from '@/shared/promise/in-unit';
import { unwrap } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';

const density = (grams: number) => unwrap(gramsPerLitre(grams));
const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0);
const kept = (amounts: readonly number[], free: number, grams = 1100) =>
  inKeptUnit(amounts, { from: 'mg', to: 'uL', density: density(grams), free });

describe('what is taken of a container, in the unit it is kept in', () => {
  it('is rounded up, so that each is enough, where there is room for that', () => {
    expect(kept([367, 367, 366], 1001)).toEqual([334, 334, 333]);
    expect(kept([1000], 5000)).toEqual([910]);
    expect(inKeptUnit([3, 4], { from: 'mg', to: 'mg', free: 7 })).toEqual([3, 4]);
  });

  it('is shared by the largest remainder where rounding each up would be more than is free', () => {
    expect(kept([367, 367, 366], 1000)).toEqual([334, 333, 333]);
    expect(kept([1, 1, 1], 2, 1000 * 2)).toEqual([1, 1, 0]);
  });

  it('cannot be said where mass and volume cannot be told apart, and is nothing of nothing', () => {
    expect(inKeptUnit([1], { from: 'mg', to: 'uL', free: 9 })).toBeUndefined();
    expect(kept([], 9)).toEqual([]);
  });

  it('is never more than is free, and never off by a whole small unit, for whatever fits by mass', () => {
    const anyTin = fc.record({
      free: fc.integer({ min: 1, max: 3_000_000 }),
      grams: fc.integer({ min: 600, max: 2000 }),
      // How what can be weighed out of it is parted: shares in thousandths, and whether all of it is taken.
      cuts: fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 1, maxLength: 12 }),
      whole: fc.boolean(),
    });
    let clipped = 0;
    fc.assert(
      fc.property(anyTin, ({ free, grams, cuts, whole }) => {
        const mass = inUnit(free, 'uL', 'mg', density(grams), 'down') ?? 0;
        const parts = cuts.map((cut) => Math.floor((mass * cut) / sum(cuts)));
        if (whole) parts[0] = (parts[0] ?? 0) + mass - sum(parts);
        const amounts = parts.filter((amount) => amount > 0);
        const taken = kept(amounts, free, grams) ?? [];
        expect(taken).toHaveLength(amounts.length);
        expect(sum(taken)).toBeLessThanOrEqual(free);
        for (const [nr, amount] of amounts.entries())
          expect(Math.abs((taken[nr] ?? 0) - (amount * 1000) / grams)).toBeLessThan(1.0001);
        const up = sum(amounts.map((amount) => inUnit(amount, 'mg', 'uL', density(grams), 'up') ?? 0));
        if (up > free) clipped += 1;
        else expect(sum(taken)).toBe(up);
      }),
      { numRuns: 2000 },
    );
    // It is worth something only while rounding up alone would often be too much.
    expect(clipped).toBeGreaterThan(200);
  });
});
