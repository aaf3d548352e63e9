import { type CalendarDate, calendarDateOf } from '@/shared/calendar/calendar-date';
import { dayNumber } from '@/shared/calendar/days-between';
import { unwrap } from '@/shared/result/result';

const MS_PER_DAY = 86_400_000;

/**
 * The day `days` whole days later, or earlier when negative. Own code rather than a date library's, because those work on
 * instants in the process's time zone, where some days have no midnight and one (31 Dec 1994 in Kiritimati) never was; the
 * library, asked in UTC, is the reference in the tests instead. Throws when `days` is not whole or the result leaves 1900
 * to 2199.
 * `addDays('2028-02-28', 2)` is `2028-03-01`.
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  if (!Number.isInteger(days)) throw new RangeError(`Days must be whole, got ${days}`);
  const moved = new Date((dayNumber(date) + days) * MS_PER_DAY);
  return unwrap(calendarDateOf(moved.getUTCFullYear(), moved.getUTCMonth() + 1, moved.getUTCDate()));
}
