import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * The day the limits are compared with: the day of use, or today where that day has passed. What is taken now is used
 * today at the earliest, so a past day never makes a limit that has run out good again. Used 1 Nov, asked on 25 Nov: 25 Nov.
 */
export function judgedDay({ dayOfUse, today }: { dayOfUse: CalendarDate; today: CalendarDate }): CalendarDate {
  return dayOfUse < today ? today : dayOfUse;
}
