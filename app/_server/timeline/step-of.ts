import type { Refusal } from '@/app/_server/refusal';
import { openJob } from '@/app/_server/timeline/open-job';
import { readSteps, type StepLine } from '@/app/_server/timeline/read-steps';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';

type StepOfJob = { step: StepLine; steps: StepLine[]; jobId: number; dueOn: CalendarDate | null };

/** A step that stands, of a job that is open, with the others of its job. */
export async function stepOf(
  tx: Pick<WriteTransaction, 'step' | 'job'>,
  stepId: number,
): Promise<Result<StepOfJob, Refusal>> {
  const row = await tx.step.findUnique({ where: { id: stepId }, select: { jobId: true } });
  if (!row) return err({ code: 'not-found' });
  const job = await openJob(tx, row.jobId);
  if (!job.ok) return job;
  const steps = await readSteps(tx, row.jobId);
  const step = steps.find(({ id }) => id === stepId);
  return step ? ok({ step, steps, jobId: row.jobId, dueOn: job.value.dueOn }) : err({ code: 'step-gone' });
}
