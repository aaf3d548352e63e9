import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** The later of two days. `laterOf('2026-12-01', '2026-12-04')` is the 4th. */
export function laterOf(a: CalendarDate, b: CalendarDate): CalendarDate {
  if (a > b) return a;
  return b;
}
