import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { daysToWait } from '@/shared/calendar/days-to-wait';
import { type FinishSheet, MOST_COATS } from '@/shared/finish/finish-sheet';
import { err, ok, type Result } from '@/shared/result/result';

/** One coat and its day; how it joins the one under it. */
type PlannedCoat = { readonly on: CalendarDate; readonly joins: 'first' | 'in-window' | 'sand-first' };

export type CoatDays = {
  readonly coats: readonly PlannedCoat[];
  /** The first day it bears use; undefined where the sheet does not say. */
  readonly curedOn?: CalendarDate;
};

/** Where the sheet names no recoat time, the next coat waits a day. Common practice. */
const UNSAID_HOURS = 24;

/**
 * The days of some coats, the first on the first open day from `first`. The next goes on the first open day on which the
 * one under it may be coated. Past the end of the window, or where the sheet wants it, it is sanded first. Cure counts from
 * the last coat and may end on a closed day. Three coats, again from 12 to 48 hours, from a Friday with the weekend
 * closed: Friday, Monday (sanded first), Tuesday.
 */
export function coatDays(
  count: number,
  first: CalendarDate,
  sheet: Pick<FinishSheet, 'recoatFromHours' | 'recoatToHours' | 'cureDays' | 'sandBetween'>,
  openDay: (day: CalendarDate) => CalendarDate,
): Result<CoatDays, { readonly code: 'outside-range' }> {
  if (!Number.isInteger(count) || count < 1 || count > MOST_COATS) return err({ code: 'outside-range' });
  const { recoatFromHours = UNSAID_HOURS, recoatToHours, cureDays, sandBetween } = sheet;
  const coats: PlannedCoat[] = [];
  let on = openDay(first);
  for (let nr = 0; nr < count; nr += 1) {
    const under = coats.at(-1)?.on;
    if (under) on = openDay(addDays(under, daysToWait(recoatFromHours)));
    const late = under !== undefined && recoatToHours !== undefined && daysBetween(under, on) * 24 > recoatToHours;
    coats.push({ on, joins: nr === 0 ? 'first' : late || sandBetween ? 'sand-first' : 'in-window' });
  }
  return ok({ coats, ...(cureDays !== undefined && { curedOn: addDays(on, cureDays) }) });
}
