import { describe, expect, it } from 'vitest';
import { addExact } from '@/shared/units/add-exact';
import { addQuantities } from '@/shared/units/add-quantities';
import { LONGEST, MOST_MONEY, mostInAContainer } from '@/shared/units/limits';
import { nanometres } from '@/shared/units/nanometres';
import { type Quantity, quantity } from '@/shared/units/quantity';
import { amountOf, type Milligrams, microlitres, milligrams, pieces } from '@/shared/units/stock-unit';
import { subtractQuantities } from '@/shared/units/subtract-quantities';

const asStored = (unit: Quantity['unit'], amount: number): Quantity => quantity(unit, amount);

describe('branded amounts', () => {
  it('two units do not mix at compile time', () => {
    // @ts-expect-error milligrams and microlitres do not add
    addExact(milligrams(1), microlitres(1));
    // @ts-expect-error a plain number does not say what it counts
    const bare: Milligrams = 5;
    // @ts-expect-error a length is not a mass
    const length: Milligrams = nanometres(5);
    // @ts-expect-error the named unit decides the brand
    const volume: Milligrams = amountOf('uL', 5);
    expect([bare, length, volume]).toEqual([5, 5, 5]);
  });

  it('stored bigints come in exactly, and what is no exact integer throws', () => {
    expect(milligrams(1_000_000_000n)).toBe(1_000_000_000);
    expect(Object.is(pieces(-0), 0)).toBe(true);
    for (const bad of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53, 2n ** 53n]) {
      expect(() => milligrams(bad)).toThrow(RangeError);
    }
  });

  it('a sum that leaves the safe integers is an error, not a drift', () => {
    expect(addExact(milligrams(2), milligrams(3))).toEqual({ ok: true, value: 5 });
    expect(addExact(milligrams(Number.MAX_SAFE_INTEGER), milligrams(1))).toEqual({
      ok: false,
      error: { code: 'past-the-safe-integers' },
    });
  });

  it('the caps leave room for the sums they promise', () => {
    expect(mostInAContainer('mg') * 9_000_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(mostInAContainer('uL') * 9_000_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(LONGEST * 90_000).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
    expect(MOST_MONEY * 900).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
  });
});

describe('quantities', () => {
  it('adds and subtracts one unit exactly', () => {
    expect(addQuantities(quantity('mg', 2), quantity('mg', 3))).toEqual({ ok: true, value: { amount: 5, unit: 'mg' } });
    expect(subtractQuantities(quantity('uL', 5), quantity('uL', 5))).toEqual({
      ok: true,
      value: { amount: 0, unit: 'uL' },
    });
  });

  it('different units are a compile error when known and an error code when not', () => {
    // @ts-expect-error grams of a liquid do not add to litres of it
    addQuantities(quantity('mg', 2), quantity('uL', 3));
    // @ts-expect-error nor are they taken from them
    subtractQuantities(quantity('mg', 2), quantity('uL', 3));
    const error = { code: 'different-units', left: 'mg', right: 'piece' };
    expect(addQuantities(asStored('mg', 2), asStored('piece', 3))).toEqual({ ok: false, error });
    expect(subtractQuantities(asStored('mg', 2), asStored('piece', 3))).toEqual({ ok: false, error });
  });

  it('taking more than there is says how much is missing', () => {
    expect(subtractQuantities(quantity('mg', 2), quantity('mg', 5))).toEqual({
      ok: false,
      error: { code: 'more-than-there-is', short: 3 },
    });
    expect(() => subtractQuantities(quantity('mg', 2), quantity('mg', -1))).toThrow(RangeError);
  });

  it('a thousand small issues and their return leave exactly what was there', () => {
    let left = quantity('mg', 1_000_000_000);
    for (let i = 0; i < 1000; i += 1) {
      const next = subtractQuantities(left, quantity('mg', 333_333));
      if (next.ok) left = next.value;
    }
    expect(left.amount).toBe(666_667_000);
    expect(addQuantities(left, quantity('mg', 333_333_000))).toEqual({
      ok: true,
      value: { amount: 1_000_000_000, unit: 'mg' },
    });
  });
});
