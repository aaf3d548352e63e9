import { longMonth } from '@/shared/calendar/month-names';
import type { TypedDateError } from '@/shared/calendar/read-typed-date';

/**
 * What is wrong with a typed date and what to type instead, in a sentence for the person who typed it.
 * 30 Feb 2027 gives `February 2027 has 28 days, so there is no day 30.`
 */
export function sayDateError(error: TypedDateError): string {
  switch (error.code) {
    case 'empty':
      return 'Type a date, for example 12 Dec 2026 or 01/2027.';
    case 'not-a-date':
      return 'This does not read as a date. Try 12 Dec 2026 or 01/2027.';
    case 'year-missing':
      return 'Add the year, for example 12 Dec 2026.';
    case 'year-out-of-range':
      return `The year ${error.year} is out of reach. Use a year from 1900 to 2199.`;
    case 'no-such-month':
      return `There is no month ${error.month}. Months go from 1 to 12.`;
    case 'no-such-day':
      return `${longMonth(error.month)} ${error.year} has ${error.daysInMonth} days, so there is no day ${error.day}.`;
  }
}
