import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const LONGEST_BACK = 90;
const LONGEST_ON = 120;

const clamp = (day: CalendarDate, least: CalendarDate, most: CalendarDate) =>
  day < least ? least : day > most ? most : day;

/**
 * The stretch of days of Watch's rule: from a week before the earliest limit to a week after the latest, but always a
 * week back and three weeks on, and never more than 90 days back or 120 on, so that the days to come stay readable.
 */
export function watchSpan(
  limits: readonly CalendarDate[],
  today: CalendarDate,
): { from: CalendarDate; to: CalendarDate } {
  const days = [...limits].sort();
  return {
    from: clamp(addDays(days[0] ?? today, -7), addDays(today, -LONGEST_BACK), addDays(today, -7)),
    to: clamp(addDays(days.at(-1) ?? today, 7), addDays(today, 21), addDays(today, LONGEST_ON)),
  };
}
