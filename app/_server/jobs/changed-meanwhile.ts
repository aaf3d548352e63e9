import { type JobFields, type JobRow, jobRow } from '@/app/_server/jobs/add-job';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

/**
 * The refusal of a form that was opened on a job as it is no more, with what each field says now and who changed it last;
 * undefined where the job still is as it was. Only what the form writes is looked at.
 */
export async function changedMeanwhile(
  tx: Pick<WriteTransaction, 'entry'>,
  job: { id: number } & { [field in keyof JobRow]: string | null },
  was: JobFields,
  fields: readonly (keyof JobRow)[],
): Promise<Refusal | undefined> {
  const seen: Partial<JobRow> = jobRow(was);
  const changed = fields.filter((field) => seen[field] !== undefined && seen[field] !== job[field]);
  if (changed.length === 0) return undefined;
  const last = await tx.entry.findFirst({
    where: { jobId: job.id, kind: 'job-changed' },
    orderBy: { id: 'desc' },
    select: { who: true },
  });
  return {
    code: 'job-changed-meanwhile',
    facts: {
      job: job.name,
      who: last?.who ?? null,
      ...Object.fromEntries(changed.map((field) => [field, job[field] ?? ''])),
    },
  };
}
