import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { allocate } from '@/shared/units/allocate';
import { readCurrency } from '@/shared/units/currency';
import { currencyChoices } from '@/shared/units/currency-choices';
import { minorUnits } from '@/shared/units/minor-units';
import { parseMoney } from '@/shared/units/parse-money';
import { printMoney } from '@/shared/units/print-money';

const currency = (code: string) => unwrap(readCurrency(code));
const USD = currency('USD');
const EUR = currency('EUR');
const KWD = currency('KWD');
const JPY = currency('JPY');

describe('reading a price', () => {
  it.each([
    ['12.50', USD, 1250],
    ['12,50', USD, 1250],
    ['12.5', USD, 1250],
    ['.99', USD, 99],
    ['1250', USD, 125_000],
    ['1,250', USD, 125_000],
    ['$1,250.50', USD, 125_050],
    ['$ 1,250.50 USD', USD, 125_050],
    ['usd 5', USD, 500],
    ['1.250,00 €', EUR, 125_000],
    ['1 250,00', EUR, 125_000],
    ["CHF 1'250.00", currency('CHF'), 125_000],
    ['CA$5', currency('CAD'), 500],
    ['US$5', USD, 500],
    ['F CFA 500', currency('XOF'), 500],
    ['500 f cfa', currency('XOF'), 500],
    ['$5', currency('CAD'), 500],
    ['¥1,250', JPY, 1250],
    ['1.250', KWD, 1250],
    ['1,250.500 KWD', KWD, 1_250_500],
    ['0', USD, 0],
  ])('%s', (text, code, minor) => {
    expect(parseMoney(text, code)).toEqual({ ok: true, value: minor });
  });

  it.each([
    ['', USD, { code: 'empty' }],
    ['$', USD, { code: 'not-a-number', at: 1 }],
    ['12.50.10', USD, { code: 'not-a-number', at: 0 }],
    ['1,25,0', USD, { code: 'not-a-number', at: 0 }],
    ['5 + 5', USD, { code: 'not-a-number', at: 2 }],
    ['-5', USD, { code: 'negative', at: 0 }],
    ['$-5', USD, { code: 'negative', at: 1 }],
    ['€5', USD, { code: 'other-currency', at: 0, written: '€', wanted: 'USD' }],
    ['KWD 5', currency('ZMW'), { code: 'other-currency', at: 0, written: 'KWD', wanted: 'ZMW' }],
    ['five', USD, { code: 'other-currency', at: 0, written: 'five', wanted: 'USD' }],
    ['5 CAD', USD, { code: 'other-currency', at: 2, written: 'CAD', wanted: 'USD' }],
    ['1.250', USD, { code: 'two-readings', at: 0 }],
    ['1,250', KWD, { code: 'two-readings', at: 0 }],
    ['1.250', JPY, { code: 'two-readings', at: 0 }],
    ['1.2345', USD, { code: 'finer-than-the-book', at: 0, digits: 2 }],
    ['1.5', JPY, { code: 'finer-than-the-book', at: 0, digits: 0 }],
    ['100000000000.01', USD, { code: 'absurd', at: 0, most: 10_000_000_000_000 }],
  ])('%j is refused', (text, code, error) => {
    expect(parseMoney(text, code)).toEqual({ ok: false, error });
  });

  it('never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[$€ A-Z]{0,4}[-\d.,' ]{0,20}[$€ A-Z]{0,4}$/)),
        fc.constantFrom(USD, JPY, KWD),
        (text, code) => {
          const read = parseMoney(text, code);
          if (read.ok) expect(Number.isSafeInteger(read.value) && read.value >= 0).toBe(true);
          else if ('at' in read.error) expect(read.error.at).toBeLessThanOrEqual(text.length);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('printing', () => {
  it('uses the digits of ISO 4217 in any language', () => {
    expect(printMoney(minorUnits(125_050), USD)).toBe('$1,250.50');
    expect(printMoney(minorUnits(-5), USD)).toBe('-$0.05');
    expect(printMoney(minorUnits(1250), JPY)).toBe('¥1,250');
    expect(printMoney(minorUnits(125_050), EUR, 'de-DE')).toBe('1.250,50\u00a0€');
    expect(printMoney(minorUnits(Number.MAX_SAFE_INTEGER), USD)).toBe('$90,071,992,547,409.91');
  });

  it('every currency of the list is read back as it was printed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...currencyChoices()), fc.nat({ max: 10_000_000_000_000 }), ({ code }, minor) => {
        expect(parseMoney(printMoney(minorUnits(minor), code), code)).toEqual({ ok: true, value: minor });
      }),
      { numRuns: 1500 },
    );
  });
});

describe('sharing out', () => {
  it.each([
    [100, [1, 1, 1], [34, 33, 33]],
    [-100, [1, 1, 1], [-34, -33, -33]],
    [5, [0, 1, 0], [0, 5, 0]],
    [1, [1, 2], [0, 1]],
    [0, [3, 4], [0, 0]],
    [10, [1, 1, 1, 1], [3, 3, 2, 2]],
  ])('%d by %j', (minor, weights, shares) => {
    expect(allocate(minorUnits(minor), weights)).toEqual({ ok: true, value: shares });
  });

  it('says which weight it cannot use', () => {
    expect(allocate(minorUnits(5), [])).toEqual({ ok: false, error: { code: 'no-weights' } });
    expect(allocate(minorUnits(5), [0, 0])).toEqual({ ok: false, error: { code: 'weights-are-all-zero' } });
    for (const bad of [-1, 0.5, Number.NaN, 2 ** 53]) {
      expect(allocate(minorUnits(5), [1, bad])).toEqual({ ok: false, error: { code: 'bad-weight', index: 1 } });
    }
  });

  it('the shares add up to the whole, each within one minor unit of its due, and a weight of zero gets none', () => {
    fc.assert(
      fc.property(
        fc.maxSafeInteger(),
        fc.array(fc.oneof(fc.nat({ max: 1000 }), fc.maxSafeNat()), { minLength: 1, maxLength: 12 }),
        (minor, weights) => {
          fc.pre(weights.some((weight) => weight > 0));
          const shares = unwrap(allocate(minorUnits(minor), weights)).map(BigInt);
          const all = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
          expect(shares.reduce((sum, share) => sum + share, 0n)).toBe(BigInt(minor));
          for (const [index, share] of shares.entries()) {
            const weight = BigInt(weights[index] ?? 0);
            const off = share * all - BigInt(minor) * weight;
            expect(off < 0n ? -off : off).toBeLessThan(all);
            if (weight === 0n) expect(share).toBe(0n);
          }
        },
      ),
    );
  });
});
