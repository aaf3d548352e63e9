import { addDays } from '@/shared/calendar/add-days';
import { addMonths } from '@/shared/calendar/add-months';
import { type CalendarDate, LAST_DAY, partsOf } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import type { Life } from '@/shared/calendar/life';

/**
 * The last day of a life that starts on `start`: the same day of a later month or year, itself still good. Days and weeks
 * are counted, months and years go by the calendar with the end of a short month clamped. A life that would run past
 * 2199-12-31 ends there: the calendar stops, the screen must not. Throws on a negative or broken count.
 * `addLife('2026-08-31', { count: 6, unit: 'month' })` is `2027-02-28`.
 */
export function addLife(start: CalendarDate, life: Life): CalendarDate {
  const { count, unit } = life;
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`A life must be a whole count, got ${count}`);
  if (unit === 'day' || unit === 'week') {
    const days = unit === 'week' ? count * 7 : count;
    return days > daysBetween(start, LAST_DAY) ? LAST_DAY : addDays(start, days);
  }
  const months = unit === 'year' ? count * 12 : count;
  const { year, month } = partsOf(start);
  const monthsLeft = (2199 - year) * 12 + (12 - month);
  return months > monthsLeft ? LAST_DAY : addMonths(start, months);
}
