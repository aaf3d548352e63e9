import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { laterOf } from '@/shared/calendar/later-of';
import { bearsOn } from '@/shared/timeline/bears-on';
import { lineOfEachPart } from '@/shared/timeline/line-of-each-part';
import { groups } from '@/shared/timeline/links-of';
import { dayOfStep, type Step, type StepKind } from '@/shared/timeline/step';
import type { HoursOfDay, TimelineFacts } from '@/shared/timeline/timeline-facts';

/** What may not be done yet: until which day, and what cures until then. */
export type CureHold = {
  readonly until: CalendarDate;
  /** Minutes since midnight on that day from which it is free; the whole of it where there are none. */
  readonly untilMinute?: number;
  readonly because: 'not-poured' | 'demould' | 'full-cure' | 'finish-cure';
  /** The lift or coat it waits for. */
  readonly after: string;
};

const HELD: readonly StepKind[] = ['demould', 'flatten', 'coat', 'assembly', 'cure', 'delivery', 'other'];

/** A step as far as a hold looks at it; without a day, nothing is known of when it was to be done. */
type HeldStep = Pick<Step, 'kind' | 'partId' | 'pourId'> & { readonly day?: CalendarDate };

/**
 * The hold on a step that would be done on a day: nothing is demoulded, flattened, coated, assembled or delivered before
 * the demould day of the pour, nor delivered before the finish is cured, nor called cured before the sheet's full cure; any
 * other step is held as far as it was planned for the last lift's day or later, or belongs to the pour. A step of a part is
 * held by what cures of that part and of the whole job; a step of the whole job by what cures of any. The demould day is the
 * last lift's day with the sheet's hours, or the planned day of demoulding where that is later; once the form is off in the
 * book, the pour holds nothing more but its cure. While a lift is not poured, nothing has begun to cure: it holds from its
 * planned day, and from the day that is asked about where that day has passed; so does a coat that is not on. The last day
 * itself is free, from the hour at which the lift was poured where hours are known. Of several holds the longest. Undefined
 * where nothing holds. Last lift poured 1 Dec, demould after 72 hours, flattened on 3 Dec: until 4 Dec.
 */
export function cureHold(
  step: HeldStep,
  on: CalendarDate,
  steps: readonly Step[],
  facts: Pick<TimelineFacts, 'pours' | 'finishes' | 'hours'> & { readonly today?: CalendarDate },
): CureHold | undefined {
  if (!HELD.includes(step.kind)) return undefined;
  const lines = lineOfEachPart(steps.filter((one) => bearsOn(one, step)));
  return lines
    .flatMap((line) => [...holdsOfPours(step, on, line, facts), ...holdsOfFinishes(step, on, line, facts)])
    .filter((hold) => on < hold.until || (on === hold.until && isBeforeTheHour(hold, on, facts)))
    .sort((a, b) => (a.until < b.until ? 1 : a.until > b.until ? -1 : 0))[0];
}

function isBeforeTheHour(
  { untilMinute }: CureHold,
  on: CalendarDate,
  { hours, today }: { readonly hours?: HoursOfDay; readonly today?: CalendarDate },
): boolean {
  return untilMinute !== undefined && hours !== undefined && on === today && hours.now < untilMinute;
}

function holdsOfPours(
  step: HeldStep,
  on: CalendarDate,
  steps: readonly Step[],
  { pours, hours }: Pick<TimelineFacts, 'pours' | 'hours'>,
): CureHold[] {
  const holds: CureHold[] = [];
  for (const [pourId, lifts] of groups(
    steps.filter(({ kind }) => kind === 'lift'),
    'pourId',
  )) {
    if (step.pourId !== null && step.pourId !== pourId) continue;
    const last = latest(lifts);
    if (!last) continue;
    if (step.kind === 'other' && step.pourId === null && !(step.day && step.day >= dayOfStep(last))) continue;
    const { demouldHours = 0, fullCureDays = 0 } = pours[pourId ?? 0] ?? {};
    const waits = step.kind === 'cure' ? fullCureDays * 24 : demouldHours;
    const unpoured = lifts.find(({ doneOn }) => doneOn === null);
    if (unpoured) {
      holds.push({
        until: addDays(laterOf(dayOfStep(last), on), Math.max(1, Math.ceil(waits / 24))),
        because: 'not-poured',
        after: unpoured.name,
      });
      continue;
    }
    const demoulds = steps.filter((one) => one.kind === 'demould' && one.pourId === pourId);
    if (step.kind !== 'cure' && demoulds.length > 0 && demoulds.every(({ doneOn }) => doneOn !== null)) continue;
    const free = freeFrom(last, waits, hours);
    const planned = step.kind === 'demould' || step.kind === 'cure' ? undefined : lastDay(demoulds);
    const because = step.kind === 'cure' ? 'full-cure' : 'demould';
    holds.push(
      planned && planned > free.until
        ? { until: planned, because, after: last.name }
        : { ...free, because, after: last.name },
    );
  }
  return holds;
}

/** When so many hours after a lift are over: to the minute where its hour is known, else on the day that holds them all. */
function freeFrom(last: Step, waits: number, hours: HoursOfDay | undefined): Pick<CureHold, 'until' | 'untilMinute'> {
  const minute = hours?.pouredAt[last.id];
  if (minute === undefined) return { until: addDays(dayOfStep(last), Math.ceil(waits / 24)) };
  const over = minute + waits * 60;
  return { until: addDays(dayOfStep(last), Math.floor(over / 1440)), untilMinute: Math.ceil(over % 1440) };
}

function holdsOfFinishes(
  step: HeldStep,
  on: CalendarDate,
  steps: readonly Step[],
  { finishes }: Pick<TimelineFacts, 'finishes'>,
): CureHold[] {
  const isOfPour = step.kind === 'cure' && step.pourId !== null;
  if (isOfPour || (step.kind !== 'delivery' && step.kind !== 'cure')) return [];
  const finished = groups(
    steps.filter(({ kind }) => kind === 'coat'),
    'productId',
  );
  return [...finished].flatMap(([productId, coats]) => {
    const last = latest(coats);
    if (!last || (step.kind === 'cure' && !(step.day && step.day >= dayOfStep(last)))) return [];
    const days = finishes[productId ?? 0]?.cureDays ?? 0;
    // A coat that is not on yet, though its day has passed, goes on today at the earliest.
    const from = last.doneOn ?? laterOf(last.day, on);
    return [{ until: addDays(from, days), because: 'finish-cure' as const, after: last.name }];
  });
}

const lastDay = (steps: readonly Step[]): CalendarDate | undefined =>
  steps
    .map(({ day }) => day)
    .sort()
    .at(-1);

function latest(steps: readonly Step[]): Step | undefined {
  return steps.reduce<Step | undefined>(
    (last, one) => (!last || dayOfStep(one) >= dayOfStep(last) ? one : last),
    undefined,
  );
}
