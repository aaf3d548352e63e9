import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { goalOfJob, type PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { PullStart } from '@/app/(shop)/pull/_ui/pull-start';

/**
 * What the bench is for when it opens: the job of the link, else what the device was told, with the job as it is in the
 * book now. A job that is not open any more is let go, with a sentence about it.
 */
export function goalNow(
  start: PullStart,
  jobs: readonly JobLine[],
  kept: PullGoal | undefined,
): { goal?: PullGoal; notice?: string } {
  const wanted = start.jobId ?? kept?.jobId;
  if (wanted === undefined) return { goal: kept };
  const job = jobs.find((one) => one.id === wanted);
  if (job) return { goal: goalOfJob(job) };
  const name = kept?.jobId === wanted ? kept.name : 'That job';
  return { notice: `${name} is not open any more. Choose what this is for.` };
}
