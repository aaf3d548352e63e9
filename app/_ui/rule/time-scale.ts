import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';

/** A stretch of days laid along a line of length 1. Each day is a cell: it has a start, a middle and an end. */
export interface TimeScale {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Cells on the line; both `from` and `to` have one. */
  readonly days: number;
  startOf(day: CalendarDate): number;
  middleOf(day: CalendarDate): number;
  endOf(day: CalendarDate): number;
  has(day: CalendarDate): boolean;
}

/**
 * Lays the days `from` to `to`, both included, along a line of length 1. Days outside give places below 0 or above 1.
 * When `to` is not after `from` the line shows one day.
 * From 1 to 10 January, `middleOf('2027-01-01')` is 0.05 and `endOf('2027-01-10')` is 1.
 */
export function timeScale(from: CalendarDate, to: CalendarDate): TimeScale {
  const days = Math.max(1, daysBetween(from, to) + 1);
  const place = (day: CalendarDate, within: number) => (daysBetween(from, day) + within) / days;
  return {
    from,
    to: addDays(from, days - 1),
    days,
    startOf: (day) => place(day, 0),
    middleOf: (day) => place(day, 0.5),
    endOf: (day) => place(day, 1),
    has: (day) => day >= from && day <= addDays(from, days - 1),
  };
}
