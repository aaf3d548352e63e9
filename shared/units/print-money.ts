import { type CurrencyCode, currencyDigits } from '@/shared/units/currency';
import type { MinorUnits } from '@/shared/units/minor-units';

/**
 * Money for people, with the digits ISO 4217 gives the currency (which differ from the platform's own for some). Exact:
 * no floating point number stands between. `locale` is a BCP 47 tag, English unless told, so that server and browser
 * agree; a malformed tag throws. In English `parseMoney` reads it back (zero and above).
 * `printMoney(minorUnits(125_050), currency)` in USD is `$1,250.50`.
 */
export function printMoney(minor: MinorUnits, currency: CurrencyCode, locale = 'en'): string {
  const digits = currencyDigits(currency);
  const size = String(Math.abs(minor)).padStart(digits + 1, '0');
  const whole = size.slice(0, size.length - digits);
  const decimal = `${minor < 0 ? '-' : ''}${whole}${digits ? `.${size.slice(-digits)}` : ''}`;
  return new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(decimal as `${number}`);
}
