import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';

type Reader = Pick<WriteTransaction, 'jobPart' | 'pour' | 'step'>;
type Found = (rule: string, where: string, says: string) => void;

/**
 * A step and a pour are of a part that their own job still has, or of the whole job; a step of a pour is of the part the
 * pour is of. Steps that were planned before they knew their part are the whole job's.
 */
export async function proveParts(tx: Reader, found: Found): Promise<void> {
  const jobOf = new Map(
    (await tx.jobPart.findMany({ where: STANDS, select: { id: true, jobId: true } })).map((part) => [
      part.id,
      part.jobId,
    ]),
  );
  const [order, where] = [{ id: 'asc' } as const, { partId: { not: null }, ...STANDS }];
  const pours = await tx.pour.findMany({ where, orderBy: order, select: { id: true, jobId: true, partId: true } });
  const steps = await tx.step.findMany({ where, orderBy: order, select: { id: true, jobId: true, partId: true } });
  for (const [word, rows] of [['pour', pours] as const, ['step', steps] as const]) {
    for (const { id, jobId, partId } of rows) {
      if (jobOf.get(partId ?? 0) === jobId) continue;
      found(
        'parts-of-their-own-job',
        `${word} ${id}`,
        `is of job ${jobId} and of part ${partId}, which that job has not`,
      );
    }
  }
  const ofPours = await tx.step.findMany({
    where: { pourId: { not: null }, pour: STANDS, ...STANDS },
    orderBy: order,
    select: { id: true, partId: true, pour: { select: { id: true, partId: true } } },
  });
  for (const { id, partId, pour } of ofPours) {
    if (!pour || pour.partId === partId || (pour.partId !== null && partId === null)) continue;
    found('one-part-a-pour', `step ${id}`, `is of part ${partId}, its pour ${pour.id} of part ${pour.partId}`);
  }
}
