import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { unwrap } from '@/shared/result/result';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
/** ISO 8601 calls 1 January 2001 a Monday. */
const A_MONDAY = unwrap(parseCalendarDate('2001-01-01'));

/** The day of the week of a date, in the Gregorian calendar: 2 Dec 2026 is `Wed`. */
export function sayWeekday(date: CalendarDate): string {
  const since = daysBetween(A_MONDAY, date);
  return WEEKDAYS[((since % 7) + 7) % 7] ?? '';
}
