import type { WriteTransaction } from '@/prisma/open-book';

export type StocktakeHead = {
  id: number;
  /** Its number, that of the entry that began it. */
  stocktake: number;
  placeId: number;
  place: string;
  placeLabel: string;
  begunAt: Date;
  begunBy: string;
  /** What closed it and stands; none while it goes on. */
  closed: { entryId: number; at: Date; by: string; posted: boolean; why: string; answer: string } | null;
};

/** One stocktake by its number, or undefined. */
export async function loadStocktake(
  tx: Pick<WriteTransaction, 'stocktake'>,
  stocktake: number,
): Promise<StocktakeHead | undefined> {
  const row = await tx.stocktake.findFirst({ where: { entryId: stocktake }, select: stocktakeSelect });
  return row ? stocktakeHead(row) : undefined;
}

export const stocktakeSelect = {
  id: true,
  entryId: true,
  placeId: true,
  posted: true,
  place: { select: { name: true, label: true } },
  entry: { select: { writtenAt: true, who: true } },
  closedBy: {
    select: { id: true, writtenAt: true, who: true, why: true, answer: true, reversedBy: { select: { id: true } } },
  },
} as const;

type Row = {
  id: number;
  entryId: number;
  placeId: number;
  posted: boolean;
  place: { name: string; label: string };
  entry: { writtenAt: Date; who: string };
  closedBy: {
    id: number;
    writtenAt: Date;
    who: string;
    why: string;
    answer: string;
    reversedBy: { id: number } | null;
  } | null;
};

export function stocktakeHead(row: Row): StocktakeHead {
  const { closedBy } = row;
  return {
    id: row.id,
    stocktake: row.entryId,
    placeId: row.placeId,
    place: row.place.name,
    placeLabel: row.place.label,
    begunAt: row.entry.writtenAt,
    begunBy: row.entry.who,
    closed:
      closedBy && closedBy.reversedBy === null
        ? {
            entryId: closedBy.id,
            at: closedBy.writtenAt,
            by: closedBy.who,
            posted: row.posted,
            why: closedBy.why,
            answer: closedBy.answer,
          }
        : null,
  };
}
