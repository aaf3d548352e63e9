import type { WriteTransaction } from '@/prisma/open-book';

/**
 * For each pour of some jobs the pours it took the place of, one after another, the newest first. An entry that plans a pour
 * anew takes one off: that one came before it.
 */
export async function poursBefore(
  tx: Pick<WriteTransaction, 'pour'>,
  jobIds: readonly number[],
): Promise<(pourId: number) => readonly number[]> {
  const pours = await tx.pour.findMany({
    where: { jobId: { in: [...jobIds] } },
    orderBy: { id: 'asc' },
    select: { id: true, entryId: true, removedById: true },
  });
  const entryOf = new Map(pours.map(({ id, entryId }) => [id, entryId]));
  const takenOffBy = new Map(pours.flatMap(({ id, removedById }) => (removedById === null ? [] : [[removedById, id]])));
  const before = (id: number): readonly number[] => {
    const one = takenOffBy.get(entryOf.get(id) ?? 0);
    return one === undefined || one >= id ? [] : [one, ...before(one)];
  };
  return before;
}
