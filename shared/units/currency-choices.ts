import { allCurrencies, type Currency } from '@/shared/units/currency';

/**
 * The currencies to choose from on the setup screen, in order of their codes, without the Chilean unit of account,
 * which nobody pays with. `currencyChoices()[0]` is the UAE dirham, `AED`, of 2 digits.
 */
export function currencyChoices(): readonly Currency[] {
  return allCurrencies()
    .filter(({ code }) => code !== 'CLF')
    .sort((a, b) => (a.code < b.code ? -1 : 1));
}
