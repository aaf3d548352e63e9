import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { curedOn } from '@/shared/timeline/cured-on';
import { dayOfStep, type Step, type StepKind } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** The days before which a job cannot be ready, each undefined where nothing of the kind is planned or known. */
export type ReadyDays = {
  /** Everything poured and coated is cured. */
  readonly cured?: CalendarDate | undefined;
  /** All of its wood is dry, at the likeliest. */
  readonly dry?: CalendarDate | undefined;
  /** The last work on it that is still to be done, delivery left out. */
  readonly work?: CalendarDate | undefined;
};

const WORK: readonly StepKind[] = ['seal', 'lift', 'demould', 'flatten', 'assembly', 'coat', 'other'];

/**
 * When a job is ready by its own time line: cured by the sheets, or by a step that says so where that is later; its wood
 * dry by the steps that are not done and the days its pieces are likely dry on, `dryOn`; its work done. A step that is done
 * holds nothing but the cure, which counts from the day it was done. A day that is known to be never is left out of `dryOn`.
 *
 * Example: last coat 12 Dec with 7 days, wood dry 3 Dec → cured 19 Dec, dry 3 Dec, work 12 Dec.
 */
export function readyDays(
  steps: readonly Step[],
  facts: Pick<TimelineFacts, 'pours' | 'finishes'>,
  dryOn: readonly CalendarDate[] = [],
): ReadyDays {
  const last = (days: readonly (CalendarDate | undefined)[]) =>
    days
      .flatMap((day) => day ?? [])
      .sort()
      .at(-1);
  const open = (...kinds: readonly StepKind[]) =>
    steps.filter(({ kind, doneOn }) => doneOn === null && kinds.includes(kind)).map(dayOfStep);
  return {
    cured: last([curedOn(steps, facts), ...open('cure')]),
    dry: last([...open('wood-dry'), ...dryOn]),
    work: last(open(...WORK)),
  };
}
