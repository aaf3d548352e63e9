import type { Refusal } from '@/app/_server/refusal';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import { err, ok, type Result } from '@/shared/result/result';

/** The part something is planned for, or null for the whole job; refused where the job has no such part any more. */
export async function partOfJob(
  tx: Pick<WriteTransaction, 'jobPart'>,
  jobId: number,
  partId: number | null,
): Promise<Result<{ id: number; name: string } | null, Refusal>> {
  if (partId === null) return ok(null);
  const part = await tx.jobPart.findFirst({
    where: { id: partId, jobId, ...STANDS },
    select: { id: true, name: true },
  });
  return part ? ok(part) : err({ code: 'part-gone', field: 'partId' });
}
