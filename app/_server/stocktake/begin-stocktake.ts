import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { walkInTheWay } from '@/app/_server/stocktake/walk-in-the-way';
import { err, ok } from '@/shared/result/result';

/** `stocktake`: its number, that of the entry that began it. */
export type BegunStocktake = { stocktake: number; place: string };

/**
 * Begins a walk through a place and every place inside it. Refused while another goes on in any of them, or around it:
 * two people walk one place together, on the same stocktake.
 */
export const beginStocktake: Command<{ placeLabel: string }, BegunStocktake> = (book, by, input) =>
  writeEntry<BegunStocktake>(book, { ...by, kind: 'stocktake-begun', request: input }, async (pen) => {
    const place = await pen.tx.place.findUnique({
      where: { label: input.placeLabel },
      select: { id: true, name: true },
    });
    if (!place) return err({ code: 'not-found', field: 'placeLabel' });
    const other = await walkInTheWay(pen.tx, place.id);
    if (other !== undefined) return err({ code: 'stocktake-goes-on', field: 'placeLabel', facts: { place: other } });
    const answer = { stocktake: pen.entryId, place: place.name };
    await pen.enter({ placeId: place.id, why: place.name }, answer);
    await pen.tx.stocktake.create({ data: { entryId: pen.entryId, placeId: place.id }, select: { id: true } });
    return ok(answer);
  });
