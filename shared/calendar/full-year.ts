import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';

/**
 * The full year meant by two digits, the one nearest to today: 49 years back to 50 years on. The rule is GS1's (General
 * Specifications, determination of century): a difference of 51 to 99 from today's two digits is the century before,
 * -99 to -50 the century after. In 2026, `fullYear(76, today)` is 2076 and `fullYear(77, today)` is 1977.
 */
export function fullYear(twoDigits: number, today: CalendarDate): number {
  const thisYear = partsOf(today).year;
  const difference = twoDigits - (thisYear % 100);
  const century = thisYear - (thisYear % 100);
  if (difference >= 51) return century - 100 + twoDigits;
  if (difference <= -50) return century + 100 + twoDigits;
  return century + twoDigits;
}
