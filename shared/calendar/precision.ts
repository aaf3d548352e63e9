import { type CalendarDate, calendarDateOf, daysInMonth, partsOf } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/** How much of a date is known: a day, only its month, or only its year. */
export type Precision = 'day' | 'month' | 'year';

/**
 * The last day a date of this precision can mean: the day itself, the end of its month, or the end of its year. This is
 * how a limit printed as month and year is read (US Navy training text on shelf life; GS1 General Specifications, day 00).
 * `lastDayOf('2027-02-01', 'month')` is `2027-02-28`.
 */
export function lastDayOf(date: CalendarDate, precision: Precision): CalendarDate {
  if (precision === 'day') return date;
  const { year, month } = partsOf(date);
  const toMonth = precision === 'year' ? 12 : month;
  return unwrap(calendarDateOf(year, toMonth, daysInMonth(year, toMonth)));
}

/**
 * The first day a date of this precision can mean. The cautious reading of a day of making, since a life counted from it
 * then ends no later than it truly does. `firstDayOf('2026-05-31', 'month')` is `2026-05-01`.
 */
export function firstDayOf(date: CalendarDate, precision: Precision): CalendarDate {
  if (precision === 'day') return date;
  const { year, month } = partsOf(date);
  return unwrap(calendarDateOf(year, precision === 'year' ? 1 : month, 1));
}
