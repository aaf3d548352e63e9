import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';
import { parseLength } from '@/shared/units/parse-length';
import { parseMoney } from '@/shared/units/parse-money';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { sayLengthError } from '@/shared/units/say-length-error';
import { sayMoneyError } from '@/shared/units/say-money-error';
import { sayQuantityError } from '@/shared/units/say-quantity-error';

const typed = fc.oneof(
  fc.string(),
  fc.stringMatching(/^-?[0-9]{0,6}[.,/ ]?[0-9]{0,4} ?(kg|lb|L|oz|mm|in|ft|"|\$|EUR|pcs|x)?$/),
);
const USD = unwrap(readCurrency('USD'));
const SENTENCE = /^[A-Z“].*\.$/s;

describe('what is wrong with a typed number, in a sentence', () => {
  it('has one for whatever a quantity refuses', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom('mg' as const, 'uL' as const, 'piece' as const), (text, unit) => {
        const read = parseQuantity(text, { unit, prefer: 'metric' });
        if (!read.ok) expect(sayQuantityError(read.error)).toMatch(SENTENCE);
      }),
    );
    const litres = parseQuantity('2 L', { unit: 'mg', prefer: 'metric' });
    expect(!litres.ok && sayQuantityError(litres.error)).toBe('This is counted by weight. Give it in g, kg, oz or lb.');
  });

  it('has one for whatever a length refuses', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom('metric' as const, 'imperial' as const), (text, prefer) => {
        const read = parseLength(text, { prefer });
        if (!read.ok) expect(sayLengthError(read.error, { prefer })).toMatch(SENTENCE);
      }),
    );
  });

  it('has one for whatever a price refuses', () => {
    fc.assert(
      fc.property(typed, (text) => {
        const read = parseMoney(text, USD);
        if (!read.ok) expect(sayMoneyError(read.error, USD)).toMatch(SENTENCE);
      }),
    );
    const yen = unwrap(readCurrency('JPY'));
    const read = parseMoney('10.5', yen);
    expect(!read.ok && sayMoneyError(read.error, yen)).toBe('JPY has no decimals.');
  });
});
