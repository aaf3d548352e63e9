import { type CalendarDate, calendarDateOf, daysInMonth } from '@/shared/calendar/calendar-date';
import { fullYear } from '@/shared/calendar/full-year';

/** A date from a GS1 code. Precision `month` is a printed day 00; the date is then the last day of that month. */
export type Gs1Date = { readonly date: CalendarDate; readonly precision: 'day' | 'month' };

/**
 * The date that six digits YYMMDD mean today. Day 00 is the last day of the month, with precision `month`.
 * Undefined where the calendar has no such day in the year the century rule gives.
 *
 * Source: GS1 General Specifications 3.4.2 to 3.4.7 (day 00, from memory) and 7.12 (century).
 * `gs1Date('280200', today)` in 2026 is `{ date: '2028-02-29', precision: 'month' }`.
 */
export function gs1Date(yymmdd: string, today: CalendarDate): Gs1Date | undefined {
  const year = fullYear(Number(yymmdd.slice(0, 2)), today);
  const month = Number(yymmdd.slice(2, 4));
  const day = Number(yymmdd.slice(4, 6));
  if (month < 1 || month > 12) return undefined;
  const date = calendarDateOf(year, month, day === 0 ? daysInMonth(year, month) : day);
  return date.ok ? { date: date.value, precision: day === 0 ? 'month' : 'day' } : undefined;
}
