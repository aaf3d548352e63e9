import { isBegun } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { laterOf } from '@/shared/calendar/later-of';
import type { PourAsk } from '@/shared/pour/plan-pour';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { nanometres } from '@/shared/units/nanometres';

type Now = { today: CalendarDate; timeZone: string; sheet: Pick<ResinSheet, 'againFromHours'> };

/**
 * What of a pour was begun and stays whatever is planned anew: how many lifts, how deep, and when the last was poured, or
 * can be at the earliest where it was only weighed; then the day on which it is ready to be poured on.
 */
export function pouredOf({ lifts }: Pick<PourLine, 'lifts'>, { today, timeZone, sheet }: Now): PourAsk['poured'] {
  const stays = lifts.filter(isBegun);
  const top = stays.at(-1);
  if (!top) return undefined;
  const last = top.poured?.on ?? laterOf(top.day, today);
  const readyAt = top.poured && Date.parse(top.poured.at) + (sheet.againFromHours ?? 0) * 3_600_000;
  return {
    lifts: stays.filter(({ nr }) => nr > 0).length,
    depth: nanometres(stays.reduce((sum, { depth }) => sum + depth, 0)),
    last,
    ...(readyAt !== undefined && { ready: dateIn(timeZone, new Date(readyAt)) }),
  };
}
