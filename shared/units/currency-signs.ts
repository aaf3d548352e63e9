import { type CurrencyCode, currencyDigits } from '@/shared/units/currency';
import { plainCharacters } from '@/shared/units/plain-characters';

/**
 * What may stand beside a number and still mean this currency, longest first, in capitals and with plain spaces: its
 * code, its English sign, long and narrow, and for a dollar the sign after the country. For the Canadian dollar `CAD`,
 * `CA$` and `$`.
 */
export function currencySigns(currency: CurrencyCode): readonly string[] {
  const digits = currencyDigits(currency);
  const sign = (currencyDisplay: 'symbol' | 'narrowSymbol') =>
    new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay, maximumFractionDigits: digits })
      .formatToParts(0)
      .find(({ type }) => type === 'currency')?.value ?? currency;
  const signs = [currency, sign('symbol'), sign('narrowSymbol')];
  if (signs.includes('$')) signs.push(`${currency.slice(0, 2)}$`);
  const plain = signs.map((text) => plainCharacters(text).replaceAll('\u00a0', ' ').toUpperCase());
  return [...new Set(plain)].sort((a, b) => b.length - a.length);
}

/** How many characters at that place of a plain text are one of the signs and no longer word; 0 when none is. */
export function signLengthAt(text: string, at: number, signs: readonly string[]): number {
  const rest = text.slice(at).replaceAll('\u00a0', ' ').toUpperCase();
  const found = signs.find((sign) => rest.startsWith(sign) && !/^\p{L}{2}/u.test(rest.slice(sign.length - 1)));
  return found?.length ?? 0;
}
