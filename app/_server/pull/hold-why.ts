import type { WriteTransaction } from '@/prisma/open-book';

/** Why the thing with this stock id is held as it is: what was written with the latest change of its hold. */
export async function holdWhy(tx: Pick<WriteTransaction, 'movement'>, stockId: number, hold: string): Promise<string> {
  if (hold === 'free') return '';
  const changed = await tx.movement.findFirst({
    where: { stockId, holdTo: hold, holdFrom: { not: hold } },
    orderBy: { id: 'desc' },
    select: { entry: { select: { kind: true, why: true } } },
  });
  // An arrival or a reversal has words of its own, which are not about the hold.
  return changed?.entry.kind === 'held' ? changed.entry.why : '';
}
