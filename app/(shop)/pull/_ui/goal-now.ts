import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { goalOfJob, type PullGoal, sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { PullStart } from '@/app/(shop)/pull/_ui/pull-start';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

type Days = { readonly today: CalendarDate; readonly order: DateOrder };

/**
 * What the bench is for when it opens: the job of the link, else what the device was told, with the job as it is in the
 * book now. A job that is not open any more is let go, and a day that has passed is lifted to today, each with a sentence.
 */
export function goalNow(
  start: PullStart,
  jobs: readonly JobLine[],
  kept: PullGoal | undefined,
  { today, order }: Days,
): { goal?: PullGoal; notice?: string } {
  const wanted = start.jobId ?? kept?.jobId;
  if (wanted === undefined) return kept ? liftDay(kept, { today, order }) : {};
  const job = jobs.find((one) => one.id === wanted);
  if (job) return liftDay(goalOfJob(job), { today, order });
  const name = kept?.jobId === wanted ? kept.name : 'That job';
  return { notice: `${name} is not open any more. Choose what this is for.` };
}

/** The goal with a day that has not passed, and a sentence where it had. */
export function liftDay(goal: PullGoal, { today, order }: Days): { goal: PullGoal; notice?: string } {
  if (goal.day >= today) return { goal };
  const was = sayDate(goal.day, { order, today });
  const todo = goal.jobId === undefined ? 'Give another day if it is used later.' : 'Give the job its new day.';
  return {
    goal: { ...goal, day: today },
    notice: `The day of use of ${sayGoal(goal)}, ${was}, has passed, so it is judged for today. ${todo}`,
  };
}
