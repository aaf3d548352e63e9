import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

const HOUR_MS = 3_600_000;

/**
 * An instant in the middle of a day in a time zone, for what is known by its day alone: noon by the zone's clock, or
 * within half an hour of it where the zone's offset is no whole hour. Throws on a zone that `isTimeZone` refuses.
 * `noonIn('America/New_York', '2026-11-20')` is 17:00 UTC of that day.
 */
export function noonIn(timeZone: string, day: CalendarDate): Date {
  const midnight = Date.parse(`${day}T00:00:00Z`);
  // The first hour, by Greenwich, at which the zone has this day is its midnight, or at most an hour after.
  for (let hour = -15; hour <= 13; hour++) {
    const at = new Date(midnight + hour * HOUR_MS);
    if (dateIn(timeZone, at) === day) return new Date(at.getTime() + 12 * HOUR_MS);
  }
  throw new RangeError(`${timeZone} has no ${day}`);
}
