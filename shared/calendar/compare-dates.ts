import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** Order of time, for sorting: negative when `a` is earlier, 0 for the same day, positive when later. */
export function compareDates(a: CalendarDate, b: CalendarDate): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
