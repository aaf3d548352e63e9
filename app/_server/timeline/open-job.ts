import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';

type OpenJob = { id: number; name: string; dueOn: CalendarDate | null };

/** The job something is planned for; refused where it is not in the book, or over. */
export async function openJob(tx: Pick<WriteTransaction, 'job'>, jobId: number): Promise<Result<OpenJob, Refusal>> {
  const job = await tx.job.findUnique({
    where: { id: jobId },
    select: { id: true, name: true, state: true, dueOn: true },
  });
  if (!job) return err({ code: 'not-found' });
  const closed = refuseClosedJob(job);
  return closed ? err(closed) : ok({ id: job.id, name: job.name, dueOn: job.dueOn as CalendarDate | null });
}
