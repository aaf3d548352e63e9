import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { bearsOn } from '@/shared/timeline/bears-on';
import { dayOfStep, type Step } from '@/shared/timeline/step';

/**
 * The day of last use a time line gives a job: the last lift or coat that is still to be done, or where all are done the
 * last that was. Undefined without a lift or coat: the job's own day then stays.
 */
export function lastUse(steps: readonly Pick<Step, 'kind' | 'day' | 'doneOn'>[]): CalendarDate | undefined {
  const uses = steps.filter(({ kind }) => kind === 'lift' || kind === 'coat');
  const open = uses.filter(({ doneOn }) => doneOn === null);
  return (open.length > 0 ? open : uses).map(dayOfStep).sort().at(-1);
}

/**
 * The day that counts for what goes into a step: the last lift of the same pour, or the last coat of the same finish on the
 * same part or the whole job, as far as they are still to be done. Of any other step it is its own day.
 */
export function dayThatCounts(step: Step, steps: readonly Step[]): CalendarDate {
  const alike = steps.filter((one) => {
    if (one.doneOn !== null || !bearsOn(one, step)) return false;
    if (step.kind === 'lift' || step.kind === 'seal') return one.kind === 'lift' && one.pourId === step.pourId;
    return step.kind === 'coat' && one.kind === 'coat' && one.productId === step.productId;
  });
  return [step.day, ...alike.map(({ day }) => day)].sort().at(-1) ?? step.day;
}
