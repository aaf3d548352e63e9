import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { err, ok, type Result } from '@/shared/result/result';

/** One lift and its day; how it joins the one below. */
type PlannedLift = { readonly on: CalendarDate; readonly joins: 'first' | 'while-tacky' | 'sand-first' };

export type PourDays = {
  readonly lifts: readonly PlannedLift[];
  readonly lastLift: CalendarDate;
  /** Undefined where the sheet does not say. */
  readonly demould?: CalendarDate;
  readonly fullCure?: CalendarDate;
};

export type PourDaysError = { readonly code: 'no-lifts' | 'no-open-day' };

type Timing = Pick<ResinSheet, 'againFromHours' | 'againToHours' | 'demouldHours' | 'fullCureDays'>;

const MOST_DAYS_AHEAD = 120;

/**
 * The days of a pour. The next lift goes on the first open day on which the one below is ready to be poured on, rounded up
 * to whole days: on the day itself where the sheet lets it be poured on within a working day of 8 hours, the hours of that
 * day added up. Where that day is
 * still within the sheet's window it joins while tacky; past it, or where the sheet names no window, it is sanded first.
 * Demould and full cure count from the last lift and may fall on a closed day: nobody has to be there. `isClosed` says
 * which days the shop is shut. Two lifts, again from 12 to 24 hours, from a Friday with the weekend closed: Friday and
 * Monday, sanded first.
 */
export function schedulePour(
  count: number,
  first: CalendarDate,
  timing: Timing,
  isClosed: (day: CalendarDate) => boolean,
): Result<PourDays, PourDaysError> {
  if (!Number.isInteger(count) || count < 1) return err({ code: 'no-lifts' });
  const lifts: PlannedLift[] = [];
  let after = 0;
  /** Hours of the day that lifts on it have been waited for. */
  let waited = 0;
  let on: CalendarDate | undefined = openDayFrom(first, isClosed);
  for (let nr = 0; nr < count; nr += 1) {
    if (!on) return err({ code: 'no-open-day' });
    const isInTime = timing.againToHours !== undefined && after * 24 <= timing.againToHours;
    lifts.push({ on, joins: nr === 0 ? 'first' : isInTime ? 'while-tacky' : 'sand-first' });
    if (nr + 1 === count) break;
    waited += timing.againFromHours ?? 0;
    const isFull = waited > WORKING_DAY_HOURS;
    const next = openDayFrom(addDays(on, Math.max(daysToPourAgain(timing), isFull ? 1 : 0)), isClosed);
    after = next ? daysBetween(on, next) : 0;
    if (after > 0) waited = 0;
    on = next;
  }
  const lastLift = lifts.at(-1)?.on ?? first;
  return ok({
    lifts,
    lastLift,
    ...(timing.demouldHours !== undefined && { demould: addDays(lastLift, Math.ceil(timing.demouldHours / 24)) }),
    ...(timing.fullCureDays !== undefined && { fullCure: addDays(lastLift, Math.ceil(timing.fullCureDays)) }),
  });
}

const WORKING_DAY_HOURS = 8;

const daysOf = (hours: number) => (hours <= WORKING_DAY_HOURS ? 0 : Math.ceil(hours / 24));

/**
 * Whole days from a lift to the first on which another may go on it: the sheet's hours rounded up, none where they pass
 * within a working day of 8 hours. Where the sheet names none, one day: common practice. From 12 hours is one day.
 */
export const daysToPourAgain = ({ againFromHours }: Pick<Timing, 'againFromHours'>): number =>
  daysOf(againFromHours ?? 24);

function openDayFrom(day: CalendarDate, isClosed: (day: CalendarDate) => boolean): CalendarDate | undefined {
  for (let ahead = 0; ahead <= MOST_DAYS_AHEAD; ahead += 1) {
    const next = addDays(day, ahead);
    if (!isClosed(next)) return next;
  }
  return undefined;
}
