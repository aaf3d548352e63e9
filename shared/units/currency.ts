import { data } from 'currency-codes';
import { err, ok, type Result } from '@/shared/result/result';

/** An ISO 4217 code of money that people pay with. */
export type CurrencyCode = string & { readonly __brand: 'CurrencyCode' };

/** A currency of the list: its code, its English name and how many decimal digits its minor unit has. */
export type Currency = { readonly code: CurrencyCode; readonly name: string; readonly digits: number };

export type CurrencyError = { readonly code: 'unknown-currency'; readonly written: string };

// List One marks these as funds, or as having no minor unit at all (metals, units of account, test codes).
const NO_MONEY = /^(?:BOV|CHE|CHW|COU|MXV|USN|UYI|UYW|XAG|XAU|XB[ABCD]|XDR|XPD|XPT|XSU|XTS|XUA|XXX)$/;

const CURRENCIES: ReadonlyMap<string, Currency> = new Map(
  data
    .filter(({ code }) => !NO_MONEY.test(code))
    .map(({ code, currency, digits }) => [code, { code: code as CurrencyCode, name: currency.trim(), digits }]),
);

/** All currencies that can be chosen or read, unordered. */
export function allCurrencies(): readonly Currency[] {
  return [...CURRENCIES.values()];
}

/**
 * Reads a currency code, capitals or not; `unknown-currency` for what ISO 4217 List One does not hold, and for its
 * metals, funds and test codes. The Chilean unit of account CLF is kept, since contracts are priced in it.
 * `readCurrency('usd')` is `USD`.
 */
export function readCurrency(text: string): Result<CurrencyCode, CurrencyError> {
  const found = CURRENCIES.get(text.trim().toUpperCase());
  return found ? ok(found.code) : err({ code: 'unknown-currency', written: text });
}

/**
 * How many decimal digits the minor unit has, by ISO 4217 List One and not by what is usual in shops: JPY 0, USD 2, KWD
 * 3, CLF 4. Throws on a code that did not come from `readCurrency`.
 */
export function currencyDigits(currency: CurrencyCode): number {
  const found = CURRENCIES.get(currency);
  if (!found) throw new Error(`Not a currency: ${currency}`);
  return found.digits;
}
