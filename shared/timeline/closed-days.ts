import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dayNumber } from '@/shared/calendar/days-between';

/** A stretch of days on which nobody works, both ends included. */
export type ClosedRange = { readonly from: CalendarDate; readonly to: CalendarDate; readonly name: string };

/** When the workshop is shut: days of the week, 0 for Sunday to 6 for Saturday, and stretches of days. */
export type ClosedDays = { readonly weekdays: readonly number[]; readonly ranges: readonly ClosedRange[] };

export const NEVER_CLOSED: ClosedDays = { weekdays: [], ranges: [] };

/** So far ahead an open day is looked for. */
const MOST_DAYS_AHEAD = 400;

/** The day of the week, 0 for Sunday to 6 for Saturday: 1970-01-01 was a Thursday. `weekdayOf('2026-12-13')` is 0. */
export function weekdayOf(day: CalendarDate): number {
  return (((dayNumber(day) + 4) % 7) + 7) % 7;
}

/**
 * Why the workshop is closed on a day, or undefined where it is open: the name of the stretch it lies in, else
 * `weekday`. With Sundays closed, `closedOn('2026-12-13', …)` is `{ because: 'weekday' }`.
 */
export function closedOn(
  day: CalendarDate,
  { weekdays, ranges }: ClosedDays,
): { readonly because: 'weekday' } | { readonly because: 'range'; readonly name: string } | undefined {
  const range = ranges.find(({ from, to }) => from <= day && day <= to);
  if (range) return { because: 'range', name: range.name };
  return weekdays.includes(weekdayOf(day)) ? { because: 'weekday' } : undefined;
}

/**
 * The day itself where it is open, else the next open day, or the last one before it for `back`. Where none is open
 * within 400 days, a shop that never opens, the day itself: a plan that cannot be kept is said, not made impossible.
 */
export function openDay(day: CalendarDate, closed: ClosedDays, direction: 'on' | 'back' = 'on'): CalendarDate {
  for (let ahead = 0; ahead <= MOST_DAYS_AHEAD; ahead += 1) {
    const next = addDays(day, direction === 'on' ? ahead : -ahead);
    if (!closedOn(next, closed)) return next;
  }
  return day;
}
