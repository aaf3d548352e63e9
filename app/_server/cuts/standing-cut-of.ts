import type { WriteTransaction } from '@/prisma/open-book';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';

export type StandingCut = { entryId: number; who: string; made: { stockId: number; label: OwnLabelCode }[] };

/** The cut that used a piece up and was not reversed, with the pieces it made; undefined where there is none. */
export async function standingCutOf(
  tx: Pick<WriteTransaction, 'cut'>,
  stockId: number,
): Promise<StandingCut | undefined> {
  const row = await tx.cut.findFirst({
    where: { pieceId: stockId, kind: { not: 'take' }, entry: { reversedBy: null } },
    orderBy: { entryId: 'desc' },
    select: {
      entryId: true,
      entry: { select: { who: true } },
      made: { orderBy: { stockId: 'asc' }, select: { stockId: true, stock: { select: { label: true } } } },
    },
  });
  if (!row) return undefined;
  const made = row.made.map(({ stockId: id, stock }) => ({ stockId: id, label: (stock.label ?? '') as OwnLabelCode }));
  return { entryId: row.entryId, who: row.entry.who, made };
}
