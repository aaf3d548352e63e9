import type { WriteTransaction } from '@/prisma/open-book';

/**
 * The number the next mark will have. Marks are numbered by whoever holds the pen and never by the database, so that the
 * answer of the entry, which is written before them, can name them.
 */
export async function nextMarkId(tx: Pick<WriteTransaction, 'mark'>): Promise<number> {
  const last = await tx.mark.aggregate({ _max: { id: true } });
  return (last._max.id ?? 0) + 1;
}
