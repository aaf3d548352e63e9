import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { weighedOf } from '@/app/_server/pours/refuse-for-lift';
import type { Refusal } from '@/app/_server/refusal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

type Pouring = { on: CalendarDate; today: CalendarDate; timeZone: string };

/** Why a lift cannot have been poured, or not on this day; undefined where it can. */
export function refusePouring(pour: PourLine, lift: LiftLine, { on, today, timeZone }: Pouring): Refusal | undefined {
  if (pour.job.state !== 'open') return { code: 'job-not-open', facts: { job: pour.job.name, state: pour.job.state } };
  if (lift.poured) {
    return { code: 'lift-poured-already', facts: { lift: lift.nr, on: lift.poured.on, who: lift.poured.who } };
  }
  const below = pour.lifts.find(({ nr, poured }) => nr < lift.nr && !poured);
  if (below) return { code: 'lift-below-first', facts: { lift: lift.nr, below: below.nr } };
  if (on > today) return { code: 'received-in-the-future', field: 'happenedOn' };
  const earlier = pour.lifts.findLast(({ nr, poured }) => nr < lift.nr && poured);
  if (earlier?.poured && on < earlier.poured.on) {
    return {
      code: 'lift-before-the-one-below',
      field: 'happenedOn',
      facts: { on: earlier.poured.on, below: earlier.nr },
    };
  }
  for (const [row] of lift.batches.entries()) {
    for (const part of ['A', 'B'] as const) {
      if (weighedOf(lift, { batch: row + 1, part }) > 0) continue;
      return { code: 'lift-not-weighed', facts: { lift: lift.nr, batch: row + 1, of: lift.batches.length, part } };
    }
  }
  const last = lift.weighed
    .map(({ at }) => at)
    .sort()
    .at(-1);
  const weighedOn = last === undefined ? undefined : dateIn(timeZone, new Date(last));
  if (weighedOn && on < weighedOn) {
    return { code: 'poured-before-weighed', field: 'happenedOn', facts: { on: weighedOn } };
  }
  return undefined;
}
