import type { WriteTransaction } from '@/prisma/open-book';

type Found = (rule: string, where: string, says: string) => void;

/** A stocktake rests on the entry that began it, and is closed by one of its own kind, written after it. */
export async function proveStocktakes(tx: Pick<WriteTransaction, 'stocktake'>, found: Found): Promise<void> {
  const rows = await tx.stocktake.findMany({
    orderBy: { id: 'asc' },
    select: { entryId: true, placeId: true, posted: true, entry: true, closedBy: true },
  });
  for (const { entryId, placeId, posted, entry, closedBy } of rows) {
    const say = (says: string) => found('stocktakes-rest-on-entries', `stocktake ${entryId}`, says);
    if (entry.kind !== 'stocktake-begun') say(`was begun by an entry that is ${entry.kind}`);
    if (entry.placeId !== placeId) say(`walks place ${placeId}, its entry names ${entry.placeId}`);
    if (!closedBy) {
      if (posted) say('is posted, and no entry closed it');
      continue;
    }
    if (closedBy.id <= entryId) say(`was closed by entry ${closedBy.id}, before it began`);
    const kind = posted ? 'stocktake-posted' : 'stocktake-given-up';
    if (closedBy.kind !== kind) say(`was closed by entry ${closedBy.id}, which is ${closedBy.kind} and not ${kind}`);
  }
}
