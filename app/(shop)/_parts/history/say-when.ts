import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

/** A moment on the workshop's own clock: `25 Nov, 10:05`. `iso` is the instant; the year is said when it is not today's. */
export function sayWhen(
  iso: string,
  { timeZone, today, order }: { timeZone: string; today: CalendarDate; order: DateOrder },
): string {
  const instant = new Date(iso);
  const time = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  return `${sayDate(dateIn(timeZone, instant), { order, today })}, ${time.format(instant)}`;
}
