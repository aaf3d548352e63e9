import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareOfCost } from '@/shared/units/share-of-cost';

describe('what the part that is left has cost', () => {
  it('is the same part of the cost, to the nearest minor unit, a half up', () => {
    expect(shareOfCost(4500n, { left: 1_000_000n, size: 2_500_000n })).toBe(1800);
    expect(shareOfCost(1n, { left: 1n, size: 2n })).toBe(1);
    expect(shareOfCost(1n, { left: 49n, size: 100n })).toBe(0);
  });

  it('is nothing of nothing, and the whole of the whole', () => {
    expect(shareOfCost(4500n, { left: 0n, size: 7n })).toBe(0);
    expect(shareOfCost(4500n, { left: 7n, size: 7n })).toBe(4500);
  });

  it('stays exact where floating point would not, and differs from the true share by half a unit at most', () => {
    const big = fc.bigInt({ min: 1n, max: 10n ** 12n });
    fc.assert(
      fc.property(big, big, big, (cost, left, size) => {
        fc.pre(left <= size);
        const off = 2n * (BigInt(shareOfCost(cost, { left, size })) * size - cost * left);
        expect(off <= size && off >= -size).toBe(true);
      }),
    );
  });

  it('is refused of no size, or below nothing', () => {
    expect(() => shareOfCost(1n, { left: 1n, size: 0n })).toThrow(RangeError);
    expect(() => shareOfCost(1n, { left: -1n, size: 1n })).toThrow(RangeError);
    expect(() => shareOfCost(-1n, { left: 1n, size: 1n })).toThrow(RangeError);
  });
});
