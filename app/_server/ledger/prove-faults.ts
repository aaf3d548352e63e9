import type { WriteTransaction } from '@/prisma/open-book';

type Found = (rule: string, where: string, says: string) => void;

/**
 * A fault is a fault of something: of a job, or of a thing. Its lift is of its pour, and its pour of its job; its photo is of
 * the thing it was found on; what settled it was written after it, to settle it.
 */
export async function proveFaults(tx: Pick<WriteTransaction, 'fault'>, found: Found): Promise<void> {
  const rows = await tx.fault.findMany({
    orderBy: { id: 'asc' },
    select: {
      id: true,
      entryId: true,
      jobId: true,
      pourId: true,
      stockId: true,
      lift: { select: { pourId: true } },
      pour: { select: { jobId: true } },
      photo: { select: { stockId: true } },
      settledBy: { select: { id: true, kind: true } },
    },
  });
  for (const { id, entryId, jobId, pourId, stockId, lift, pour, photo, settledBy } of rows) {
    const where = `fault ${id}`;
    if (jobId === null && stockId === null) found('faults-are-of-something', where, 'names no job and no thing');
    if (lift && lift.pourId !== pourId) found('faults-are-of-something', where, 'its lift is of another pour');
    if (pour && pour.jobId !== jobId) found('faults-are-of-something', where, 'its pour is of another job');
    if (photo && photo.stockId !== stockId) found('faults-are-of-something', where, 'its photo is of another thing');
    if (settledBy && (settledBy.kind !== 'fault-settled' || settledBy.id <= entryId)) {
      found('faults-are-settled-after', where, `entry ${settledBy.id} does not settle it`);
    }
  }
}
