import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { loadStocktake } from '@/app/_server/stocktake/load-stocktake';
import { err, ok } from '@/shared/result/result';

/** Ends a walk without posting anything. What was seen stays with it; reversing this entry takes it up again. */
export const giveUpStocktake: Command<{ stocktake: number }, { place: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'stocktake-given-up', request: input }, async (pen) => {
    const stocktake = await loadStocktake(pen.tx, input.stocktake);
    if (!stocktake) return err({ code: 'not-found' });
    if (stocktake.closed) return err({ code: 'stocktake-closed' });
    const answer = { place: stocktake.place };
    await pen.enter({ placeId: stocktake.placeId, why: stocktake.place }, answer);
    await pen.tx.stocktake.update({
      where: { id: stocktake.id },
      data: { closedById: pen.entryId, posted: false },
      select: { id: true },
    });
    return ok(answer);
  });
