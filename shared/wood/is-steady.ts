import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import type { DryingPoint } from '@/shared/wood/drying-series';

/** Three weekly readings agree when they lie within half a point. Common practice; about what a meter can tell apart. */
export const STEADY_WITHIN_TENTHS = 5;
const READINGS = 3;
/** Weekly: at least 6 days apart, and no gap of more than 3 weeks, in which it may have gone up and come back. */
const LEAST_DAYS = 6;
const MOST_DAYS = 21;

export type Steadiness =
  | { readonly state: 'steady'; readonly on: readonly CalendarDate[]; readonly spreadTenths: number }
  | { readonly state: 'still-moving'; readonly on: readonly CalendarDate[]; readonly spreadTenths: number }
  /** So many more readings are wanted, the next not before that many days after the last one. */
  | { readonly state: 'too-few'; readonly wanted: number; readonly daysApart: number };

/**
 * Whether a piece has come to rest: the newest reading and the nearest two before it that lie a week or so apart agree
 * within `withinTenths`. Weekly means 6 to 21 days between them; readings in between are passed over, a longer gap
 * starts the count again. A piece can be steady and still too wet for the job: this says only that it has stopped moving
 * where it stands. Trade practice: read weekly until three weeks agree. 9.1, 8.9 and 9.0 % a week apart are steady.
 */
export function isSteady(series: readonly DryingPoint[], withinTenths = STEADY_WITHIN_TENTHS): Steadiness {
  const newestFirst = [...series].sort((a, b) => (a.on < b.on ? 1 : -1));
  const weekly: DryingPoint[] = [];
  for (const point of newestFirst) {
    const before = weekly.at(-1);
    const days = before ? daysBetween(point.on, before.on) : undefined;
    if (days !== undefined && days > MOST_DAYS) break;
    if (days === undefined || days >= LEAST_DAYS) weekly.push(point);
    if (weekly.length === READINGS) break;
  }
  if (weekly.length < READINGS) return { state: 'too-few', wanted: READINGS - weekly.length, daysApart: LEAST_DAYS };
  const figures = weekly.map(({ mcTenths }) => mcTenths);
  const spreadTenths = Math.max(...figures) - Math.min(...figures);
  const on = weekly.map((each) => each.on).reverse();
  return { state: spreadTenths <= withinTenths ? 'steady' : 'still-moving', on, spreadTenths };
}
