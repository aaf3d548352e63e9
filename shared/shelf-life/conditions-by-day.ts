import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { conditionsAfter, type TreatmentKind } from '@/shared/shelf-life/conditions-after';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** When something was done or seen: the day, and of one day the number of the entry that says so. */
export type Moment = { readonly on: CalendarDate; readonly entry: number };
export type TreatmentThen = Moment & { readonly kind: TreatmentKind };

/**
 * What is wrong with a container once a treatment is written, which may be of an earlier day than what the book has
 * already. What was done counts for what was seen on its day or before it, never for what was seen later; of one day, the
 * order of the entries decides. `before` is what is wrong now, `seen` when each of it was last seen (left out where that is
 * not known: then it was there all along), `past` the other treatments.
 *
 * - Crystals seen on 25 Nov, warmed and stirred on 2 Nov and written later: they stay.
 * - Crystals of 2 Nov written later than a warming and stirring of 5 Nov: they were dissolved then, and are not noted.
 */
export function conditionsByDay(
  before: readonly Condition[],
  now: TreatmentThen,
  { past, seen }: { readonly past: readonly TreatmentThen[]; readonly seen: ReadonlyMap<Condition, Moment> },
): readonly Condition[] {
  const kindsSince = (moment: Moment | undefined) =>
    past.filter((each) => !moment || isAfter(each, moment)).map(({ kind }) => kind);
  if (now.kind === 'crystals-seen') {
    const since = new Set(kindsSince(now));
    return since.has('warmed') && since.has('stirred') ? before : conditionsAfter(before, now.kind, []);
  }
  const seenLater = (condition: Condition) => {
    const moment = seen.get(condition);
    return moment !== undefined && isAfter(moment, now);
  };
  const open = before.filter((each) => !seenLater(each));
  const after = conditionsAfter(open, now.kind, kindsSince(seen.get('crystals')));
  return [
    ...before.filter((each) => seenLater(each) || after.includes(each)),
    ...after.filter((each) => !before.includes(each)),
  ];
}

const isAfter = (one: Moment, other: Moment): boolean =>
  one.on > other.on || (one.on === other.on && one.entry > other.entry);
