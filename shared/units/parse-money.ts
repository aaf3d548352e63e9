import { err, ok, type Result } from '@/shared/result/result';
import { type CurrencyCode, currencyDigits } from '@/shared/units/currency';
import { currencySigns, signLengthAt } from '@/shared/units/currency-signs';
import { LONGEST_TEXT, MOST_MONEY } from '@/shared/units/limits';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import { plainCharacters } from '@/shared/units/plain-characters';
import { readDecimal, type WrittenDecimal } from '@/shared/units/read-decimal';

export type MoneyError =
  | { readonly code: 'empty' }
  | { readonly code: 'not-a-number'; readonly at: number }
  | { readonly code: 'negative'; readonly at: number }
  | { readonly code: 'other-currency'; readonly at: number; readonly written: string; readonly wanted: CurrencyCode }
  /** `1.250` in dollars or `1,250` in dinars of three digits: thousands to one maker, decimals to another. */
  | { readonly code: 'two-readings'; readonly at: number }
  | { readonly code: 'finer-than-the-book'; readonly at: number; readonly digits: number }
  | { readonly code: 'absurd'; readonly at: number; readonly most: MinorUnits };

const SPACE = /\s*/y;
const OTHER_SIGN = /[^\d.,\s-]+/y;
const DIGITS = /[\d.,][\d.,' \u00a0]*/y;

function match(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
}

/**
 * Reads a price in a known currency into whole minor units, exactly: `12.50`, `$1,250`, `1.250,00 €`, `1 250,00`, `CHF
 * 1'250.00`, `.99`. Point and comma both serve: when both occur the last is the decimal mark; a lone comma before three
 * digits groups thousands, a lone point before three digits does not say what it means, and neither does a comma in a
 * currency of three digits: `two-readings`. More decimals than ISO 4217 gives the currency are `finer-than-the-book`
 * (trailing zeros included). Zero is allowed; at most 10 000 000 000 000 minor units. Never throws; `at` counts
 * characters from the start. `parseMoney('$1,250.50', currency)` in USD is 125 050.
 */
export function parseMoney(typed: string, currency: CurrencyCode): Result<MinorUnits, MoneyError> {
  const text = plainCharacters(typed).trimEnd();
  if (text.trim() === '') return err({ code: 'empty' });
  if (text.length > LONGEST_TEXT) return err({ code: 'not-a-number', at: LONGEST_TEXT });
  const signs = currencySigns(currency);
  let minusAt = -1;
  let at = match(SPACE, text, 0).length;
  const skipMinus = () => {
    if (text[at] !== '-') return;
    minusAt = at;
    at += 1 + match(SPACE, text, at + 1).length;
  };
  skipMinus();
  const before = signLengthAt(text, at, signs);
  const otherBefore = before ? '' : match(OTHER_SIGN, text, at);
  if (otherBefore) return err({ code: 'other-currency', at, written: otherBefore, wanted: currency });
  at += before;
  at += match(SPACE, text, at).length;
  skipMinus();
  const literal = match(DIGITS, text, at).trimEnd();
  if (!/\d/.test(literal)) return err({ code: 'not-a-number', at });
  if (minusAt >= 0) return err({ code: 'negative', at: minusAt });
  const end = at + literal.length + match(SPACE, text, at + literal.length).length;
  const after = text.slice(end);
  if (/\d/.test(after)) return err({ code: 'not-a-number', at: end });
  if (after && signLengthAt(text, end, signs) !== after.length) {
    return err({ code: 'other-currency', at: end, written: after, wanted: currency });
  }
  const read = readDecimal(literal.replace(/[' ]/g, '\u00a0'));
  if (!read) return err({ code: 'not-a-number', at });
  return inMinorUnits(read, currencyDigits(currency), at);
}

function inMinorUnits(read: WrittenDecimal, digits: number, at: number): Result<MinorUnits, MoneyError> {
  let { whole, fraction } = read;
  if (read.couldGroup) {
    if ((read.mark === ',') === (digits === 3)) return err({ code: 'two-readings', at });
    if (read.mark === ',') {
      whole += fraction;
      fraction = '';
    }
  }
  if (fraction.length > digits) return err({ code: 'finer-than-the-book', at, digits });
  const minor = BigInt(whole + fraction.padEnd(digits, '0'));
  return minor > BigInt(MOST_MONEY) ? err({ code: 'absurd', at, most: MOST_MONEY }) : ok(minorUnits(minor));
}
