import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { mostInAContainer } from '@/shared/units/limits';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, microlitres, milligrams, pieces, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

const METRIC = { prefer: 'metric' } as const;
const US = { prefer: 'imperial' } as const;

describe('metric', () => {
  it.each([
    [0, '0 g'],
    [1, '0.001 g'],
    [250, '0.25 g'],
    [12_540, '12.5 g'],
    [99_960, '100 g'],
    [750_000, '750 g'],
    [999_499, '999 g'],
    [999_500, '1 kg'],
    [1_840_250, '1.84 kg'],
    [2_500_000, '2.5 kg'],
    [125_040_000, '125 kg'],
    [1_000_000_000, '1000 kg'],
    [-250_000, '−250 g'],
  ])('%d mg shows as %s', (amount, text) => {
    expect(printQuantity(milligrams(amount), 'mg', METRIC)).toBe(text);
  });

  it('litres and millilitres', () => {
    expect(printQuantity(microlitres(1_200_000), 'uL', METRIC)).toBe('1.2 L');
    expect(printQuantity(microlitres(500_000), 'uL', METRIC)).toBe('500 mL');
    expect(printQuantity(microlitres(3), 'uL', METRIC)).toBe('0.003 mL');
  });
});

describe('US customary', () => {
  it.each([
    [0, '0 oz'],
    [1, '0.001 g'],
    [14_175, '0.5 oz'],
    [340_194, '12 oz'],
    [453_592, '1 lb'],
    [566_990, '1 lb 4 oz'],
    [1_840_000, '4 lb 0.9 oz'],
    [45_359_237, '100 lb'],
  ])('%d mg shows as %s', (amount, text) => {
    expect(printQuantity(milligrams(amount), 'mg', US)).toBe(text);
  });

  it.each([
    ['16 fl oz', '16 fl oz'],
    ['1 pt', '16 fl oz'],
    ['1 qt', '1 qt'],
    ['2 qt', '2 qt'],
    ['1/2 gal', '2 qt'],
    ['1 gal', '1 gal'],
    ['1 1/2 gal', '1.5 gal'],
  ])('%s shows as %s', (typed, text) => {
    const amount = unwrap(parseQuantity(typed, { unit: 'uL', prefer: 'imperial' }));
    for (const rounding of ['nearest', 'down', 'up'] as const) {
      expect(printQuantity(amount, 'uL', { ...US, rounding })).toBe(text);
    }
  });
});

it('pieces are counted in words and grouped', () => {
  expect(printQuantity(pieces(1), 'piece', METRIC)).toBe('1 piece');
  expect(printQuantity(pieces(12_500), 'piece', US)).toBe('12,500 pieces');
});

it('stock on hand may be rounded down and what is wanted up', () => {
  expect(printQuantity(milligrams(1_849_999), 'mg', { ...METRIC, rounding: 'down' })).toBe('1.84 kg');
  expect(printQuantity(milligrams(1_840_001), 'mg', { ...METRIC, rounding: 'up' })).toBe('1.85 kg');
  expect(printQuantity(milligrams(999_999), 'mg', { ...METRIC, rounding: 'down' })).toBe('999 g');
  expect(printQuantity(milligrams(-1_840_001), 'mg', { ...METRIC, rounding: 'down' })).toBe('−1.85 kg');
});

// Up to 999 kg or litres: nearer the container limit, a rounded figure may lie past it, which no one may type.
const stock = fc
  .tuple(fc.constantFrom<StockUnit>('mg', 'uL', 'piece'), fc.oneof(fc.nat({ max: 999_000_000 }), fc.nat({ max: 5000 })))
  .map(([unit, amount]) => ({ unit, amount: amountOf(unit, unit === 'piece' ? amount % 1_000_001 : amount) }));
const system = fc.constantFrom<UnitSystem>('metric', 'imperial');

/** Half the last figure shown at each size, plus the half small unit lost in reading a US unit back. */
function halfStep(amount: number, unit: StockUnit, prefer: UnitSystem): number {
  if (unit === 'piece') return 0;
  if (prefer === 'metric') {
    return amount < 1e3 ? 0 : amount < 1e5 ? 50 : amount < 1e6 ? 500 : amount < 1e8 ? 5e3 : 5e4;
  }
  const [small, pound] = unit === 'mg' ? [28_349.6, 453_593] : [29_573.6, 473_177];
  if (amount < small) return 0.005 * small + 1;
  if (unit === 'mg') return amount < 20 * pound ? 0.05 * small + 1 : 0.05 * pound + 1;
  return amount < 2 * pound ? 0.05 * small + 1 : amount < 8 * pound ? 0.01 * pound + 1 : 0.4 * pound + 1;
}

describe('for any amount', () => {
  it('the exact print of the container limit is read back', () => {
    for (const unit of ['mg', 'uL', 'piece'] as const) {
      const most = mostInAContainer(unit);
      expect(parseQuantity(printQuantityExact(most, unit), { unit, prefer: 'metric' })).toEqual({
        ok: true,
        value: most,
      });
    }
  });

  it('the exact print is read back as the same amount', () => {
    fc.assert(
      fc.property(stock, system, ({ unit, amount }, prefer) => {
        expect(parseQuantity(printQuantityExact(amount, unit), { unit, prefer })).toEqual({ ok: true, value: amount });
      }),
    );
  });

  it('what shows is read back to within half its last figure, and shows the same again', () => {
    fc.assert(
      fc.property(stock, system, ({ unit, amount }, prefer) => {
        const shown = printQuantity(amount, unit, { prefer });
        const back = unwrap(parseQuantity(shown, { unit, prefer }));
        expect(Math.abs(back - amount)).toBeLessThanOrEqual(halfStep(amount, unit, prefer));
        expect(printQuantity(back, unit, { prefer })).toBe(shown);
        if (amount > 0) expect(back).toBeGreaterThan(0);
      }),
    );
  });

  it('rounded down never shows more than there is, rounded up never less', () => {
    fc.assert(
      fc.property(stock, system, ({ unit, amount }, prefer) => {
        const read = (rounding: 'down' | 'up') =>
          unwrap(parseQuantity(printQuantity(amount, unit, { prefer, rounding }), { unit, prefer }));
        expect(read('down')).toBeLessThanOrEqual(amount);
        expect(read('up')).toBeGreaterThanOrEqual(amount);
      }),
    );
  });
});
