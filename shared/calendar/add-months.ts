import { type CalendarDate, calendarDateOf, daysInMonth, partsOf } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/**
 * The same day of the month `months` later, or earlier when negative; where that month is shorter, its last day. Adding
 * one month twice may therefore differ from adding two. Throws when `months` is not whole or the result leaves 1900 to
 * 2199. `addMonths('2026-08-31', 6)` is `2027-02-28`.
 */
export function addMonths(date: CalendarDate, months: number): CalendarDate {
  if (!Number.isInteger(months)) throw new RangeError(`Months must be whole, got ${months}`);
  const { year, month, day } = partsOf(date);
  const count = year * 12 + (month - 1) + months;
  const toYear = Math.floor(count / 12);
  const toMonth = count - toYear * 12 + 1;
  return unwrap(calendarDateOf(toYear, toMonth, Math.min(day, daysInMonth(toYear, toMonth))));
}
