import { describe, expect, it } from 'vitest';
import { LONGEST, MOST_MONEY, mostInAContainer } from '@/shared/units/limits';
import { nanometres } from '@/shared/units/nanometres';
import { amountOf, type Milligrams, microlitres, milligrams, pieces } from '@/shared/units/stock-unit';

describe('branded amounts', () => {
  it('two units do not mix at compile time', () => {
    // @ts-expect-error a volume is not a mass
    const poured: Milligrams = microlitres(5);
    // @ts-expect-error a plain number does not say what it counts
    const bare: Milligrams = 5;
    // @ts-expect-error a length is not a mass
    const length: Milligrams = nanometres(5);
    // @ts-expect-error the named unit decides the brand
    const volume: Milligrams = amountOf('uL', 5);
    expect([poured, bare, length, volume]).toEqual([5, 5, 5, 5]);
  });

  it('stored bigints come in exactly, and what is no exact integer throws', () => {
    expect(milligrams(1_000_000_000n)).toBe(1_000_000_000);
    expect(Object.is(pieces(-0), 0)).toBe(true);
    for (const bad of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53, 2n ** 53n]) {
      expect(() => milligrams(bad)).toThrow(RangeError);
    }
  });

  it('the caps leave room for the sums they promise', () => {
    expect(mostInAContainer('mg') * 9_000_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(mostInAContainer('uL') * 9_000_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(LONGEST * 90_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(MOST_MONEY * 900).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
  });
});
