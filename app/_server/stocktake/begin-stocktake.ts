import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { placeAndBelow } from '@/app/_server/places/place-and-below';
import { openStocktake } from '@/app/_server/stocktake/open-stocktakes';
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
    const open = await pen.tx.stocktake.findMany({
      where: openStocktake,
      orderBy: { id: 'asc' },
      select: { placeId: true, place: { select: { name: true } } },
    });
    const below = await placeAndBelow(pen.tx, place.id);
    for (const one of open) {
      const overlaps = below.includes(one.placeId) || (await placeAndBelow(pen.tx, one.placeId)).includes(place.id);
      if (overlaps) return err({ code: 'stocktake-goes-on', field: 'placeLabel', facts: { place: one.place.name } });
    }
    const answer = { stocktake: pen.entryId, place: place.name };
    await pen.enter({ placeId: place.id, why: place.name }, answer);
    await pen.tx.stocktake.create({ data: { entryId: pen.entryId, placeId: place.id }, select: { id: true } });
    return ok(answer);
  });
