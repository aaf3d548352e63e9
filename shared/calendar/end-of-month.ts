import { type CalendarDate, calendarDateOf, daysInMonth, partsOf } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/** The last day of the date's month. `endOfMonth('2028-02-03')` is `2028-02-29`. */
export function endOfMonth(date: CalendarDate): CalendarDate {
  const { year, month } = partsOf(date);
  return unwrap(calendarDateOf(year, month, daysInMonth(year, month)));
}
