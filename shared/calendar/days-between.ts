import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';

const MS_PER_DAY = 86_400_000;

/** Days from 1970-01-01 to the date; earlier days are negative. Counted in UTC, where every day has 24 hours. */
export function dayNumber(date: CalendarDate): number {
  const { year, month, day } = partsOf(date);
  return Date.UTC(year, month - 1, day) / MS_PER_DAY;
}

/**
 * Whole days from `from` to `to`: 0 for the same day, negative when `to` is earlier.
 * `daysBetween('2026-12-12', '2026-12-19')` is 7.
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}
