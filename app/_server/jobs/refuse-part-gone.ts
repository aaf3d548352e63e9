import { readParts } from '@/app/_server/jobs/read-parts';
import type { Refusal } from '@/app/_server/refusal';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';

/** Why an undoing may not stand: it would bring back a step, or a pour, of a part that was taken off the job since. */
export async function refusePartGone(
  tx: Pick<WriteTransaction, 'pour' | 'step' | 'jobPart'>,
  jobId: number,
): Promise<Refusal | undefined> {
  const parts = new Set((await readParts(tx, jobId)).map(({ id }) => id));
  const where = { jobId, partId: { not: null }, ...STANDS };
  const planned = [
    ...(await tx.pour.findMany({ where, select: { partId: true } })),
    ...(await tx.step.findMany({ where, select: { partId: true } })),
  ];
  return planned.some(({ partId }) => !parts.has(partId ?? 0)) ? { code: 'part-gone' } : undefined;
}
