import { addDays } from '@/shared/calendar/add-days';
import { type CalendarDate, LAST_DAY } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';

/** A limit further off than this from the day of use is left to the words, so that the days that count stay apart. */
const FURTHEST = 120;
const LEAST_ROOM = 3;

/**
 * The stretch of days to draw: today, the day of use and the limit, with a little room at both ends. A limit more than
 * 120 days before or after both others is out of the picture, and the band simply runs on.
 */
export function ribbonRange(
  today: CalendarDate,
  dayOfUse: CalendarDate,
  limit: CalendarDate | undefined,
): { from: CalendarDate; to: CalendarDate } {
  const [first, last] = today <= dayOfUse ? [today, dayOfUse] : [dayOfUse, today];
  const from = limit && limit < first && daysBetween(limit, first) <= FURTHEST ? limit : first;
  const to = limit && limit > last && daysBetween(last, limit) <= FURTHEST ? limit : last;
  const room = Math.max(LEAST_ROOM, Math.round(daysBetween(from, to) * 0.06));
  const end = daysBetween(to, LAST_DAY) < room ? LAST_DAY : addDays(to, room);
  return { from: addDays(from, -room), to: end };
}
