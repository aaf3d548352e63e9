import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

/**
 * A pack that is no longer on hand though this taking did not empty it: boards put back would be in a pack nobody has.
 * Undefined for any other entry.
 */
export async function packGoneSince(
  tx: Pick<WriteTransaction, 'cut'>,
  { id, movements }: { id: number; movements: readonly { stockId: number }[] },
): Promise<Refusal | undefined> {
  const taking = await tx.cut.findFirst({
    where: { entryId: id, kind: 'take' },
    select: { pieceId: true, parent: { select: { stock: { select: { label: true, quantity: true } } } } },
  });
  if (!taking || taking.parent.stock.quantity > 0n) return undefined;
  if (movements.some(({ stockId }) => stockId === taking.pieceId)) return undefined;
  return { code: 'pack-gone-since', facts: { label: taking.parent.stock.label } };
}
