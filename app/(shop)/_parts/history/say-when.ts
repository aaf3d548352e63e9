import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { sayDate } from '@/shared/calendar/say-date';

/** A moment on the workshop's own clock: `25 Nov, 10:05`. `iso` is the instant; the year is said when it is not today's. */
export function sayWhen(iso: string, { timeZone, today }: { timeZone: string; today: CalendarDate }): string {
  const instant = new Date(iso);
  const time = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  return `${sayDate(dateIn(timeZone, instant), { today })}, ${time.format(instant)}`;
}
