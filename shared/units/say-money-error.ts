import type { CurrencyCode } from '@/shared/units/currency';
import type { MoneyError } from '@/shared/units/parse-money';

/**
 * What is wrong with a typed price and what to type instead, in a sentence for the person who typed it.
 * `1.250` in dollars gives `This can mean thousands or decimals. Write it without the mark for thousands.`
 */
export function sayMoneyError(error: MoneyError, currency: CurrencyCode): string {
  switch (error.code) {
    case 'empty':
      return `Type a price in ${currency}.`;
    case 'not-a-number':
      return `This does not read as a price in ${currency}. Type the number alone, for example 48.50.`;
    case 'negative':
      return 'A price cannot be below zero.';
    case 'other-currency':
      return `“${error.written}” is not ${error.wanted}, the money of this book. Type it in ${error.wanted}.`;
    case 'two-readings':
      return 'This can mean thousands or decimals. Write it without the mark for thousands.';
    case 'finer-than-the-book':
      return error.digits === 0 ? `${currency} has no decimals.` : `${currency} has ${error.digits} decimals.`;
    case 'absurd':
      return 'That is more than any price. Check the number.';
  }
}
