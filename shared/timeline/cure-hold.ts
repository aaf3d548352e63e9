import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { groups } from '@/shared/timeline/links-of';
import { dayOfStep, type Step, type StepKind } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** What may not be done yet: until which day, and what cures until then. */
export type CureHold = {
  readonly until: CalendarDate;
  readonly because: 'demould' | 'finish-cure';
  /** The lift or coat it waits for. */
  readonly after: string;
};

const HELD: readonly StepKind[] = ['demould', 'flatten', 'coat', 'assembly', 'delivery'];

/**
 * The hold on a step that would be done on a day: nothing is demoulded, flattened, coated, assembled or delivered before
 * the demould day of the pour, nor delivered before the finish is cured. The demould day is the last lift's day with the
 * sheet's hours, or the planned day of demoulding where that is later; once the form is off in the book, the pour holds
 * nothing more. A lift that is not poured yet counts from its planned day. The day itself is free. Of several holds the
 * longest. Undefined where nothing holds. Last lift 1 Dec, demould after 72 hours, flattened on 3 Dec: until 4 Dec.
 */
export function cureHold(
  step: Pick<Step, 'kind' | 'pourId'>,
  on: CalendarDate,
  steps: readonly Step[],
  facts: Pick<TimelineFacts, 'pours' | 'finishes'>,
): CureHold | undefined {
  if (!HELD.includes(step.kind)) return undefined;
  const holds: CureHold[] = [];
  for (const [pourId, lifts] of groups(
    steps.filter(({ kind }) => kind === 'lift'),
    'pourId',
  )) {
    if (step.pourId !== null && step.pourId !== pourId) continue;
    const demoulds = steps.filter((one) => one.kind === 'demould' && one.pourId === pourId);
    if (demoulds.length > 0 && demoulds.every(({ doneOn }) => doneOn !== null)) continue;
    const last = latest(lifts);
    if (!last) continue;
    const bySheet = addDays(dayOfStep(last), Math.ceil((facts.pours[pourId ?? 0]?.demouldHours ?? 0) / 24));
    const planned =
      step.kind === 'demould'
        ? undefined
        : demoulds
            .map(({ day }) => day)
            .sort()
            .at(-1);
    holds.push({ until: planned && planned > bySheet ? planned : bySheet, because: 'demould', after: last.name });
  }
  if (step.kind === 'delivery') {
    for (const [productId, coats] of groups(
      steps.filter(({ kind }) => kind === 'coat'),
      'productId',
    )) {
      const last = latest(coats);
      const days = facts.finishes[productId ?? 0]?.cureDays ?? 0;
      if (last) holds.push({ until: addDays(dayOfStep(last), days), because: 'finish-cure', after: last.name });
    }
  }
  return holds
    .filter(({ until }) => on < until)
    .sort((a, b) => (a.until < b.until ? 1 : a.until > b.until ? -1 : 0))[0];
}

function latest(steps: readonly Step[]): Step | undefined {
  return steps.reduce<Step | undefined>(
    (last, one) => (!last || dayOfStep(one) >= dayOfStep(last) ? one : last),
    undefined,
  );
}
