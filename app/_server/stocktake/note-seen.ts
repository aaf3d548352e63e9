import type { Command } from '@/app/_server/act';
import { readBook } from '@/app/_server/book/read-book';
import { lookUpScan, type ScanMeaning } from '@/app/_server/codes/look-up-scan';
import { loadStocktake } from '@/app/_server/stocktake/load-stocktake';
import { type WalkThing, walkOf } from '@/app/_server/stocktake/walk-of';
import { err, ok } from '@/shared/result/result';

/** A code read on the walk, as it was read. */
export type NoteSeen = { stocktake: number; text: string; symbology?: string };

/** What was seen: a thing as the walk now has it, a place, or a code that is kept because it means no thing here. */
export type Sighting =
  | { kind: 'thing'; thing: WalkThing; again: boolean }
  | { kind: 'place'; name: string }
  | { kind: 'kept'; code: string; means: KeptMeaning; says: string };
type KeptMeaning = 'product' | 'unknown-product' | 'not-in-book' | 'unknown';

const LONGEST_CODE = 200;

/**
 * Notes that somebody saw a thing here, now. A draft: no entry, and seen again it is written over. What was counted in it
 * before stays, unless the book wrote something of it since. A code that means no thing of the book is kept as it was read.
 */
export const noteSeen: Command<NoteSeen, Sighting> = async (book, by, input) => {
  const head = await readBook(book, by.now);
  if (!head) return err({ code: 'no-book-yet' });
  const meaning = await lookUpScan(book, { text: input.text, symbology: input.symbology }, head.today);
  return book.write(async (tx) => {
    const stocktake = await loadStocktake(tx, input.stocktake);
    if (!stocktake) return err({ code: 'not-found' as const });
    if (stocktake.closed) return err({ code: 'stocktake-closed' as const });
    if (meaning.kind === 'place') return answered({ kind: 'place', name: meaning.name });
    const stockId = 'stockId' in meaning ? meaning.stockId : null;
    const code = stockId === null ? input.text.trim().slice(0, LONGEST_CODE) : '';
    const before = await tx.stocktakeLine.findFirst({
      where: { stocktakeId: stocktake.id, stockId, code },
      select: { id: true },
    });
    const data = { seenAt: by.now, who: by.who.who };
    if (before) {
      const known = (await walkOf(tx, stocktake)).things.find((thing) => thing.stockId === stockId);
      const stale = known !== undefined && known.seen !== null && known.changedAt > known.seen.at;
      await tx.stocktakeLine.update({
        where: { id: before.id },
        data: { ...data, ...(stale ? { counted: null, grossMg: null } : {}) },
        select: { id: true },
      });
    } else {
      await tx.stocktakeLine.create({
        data: { ...data, stocktakeId: stocktake.id, stockId, code },
        select: { id: true },
      });
    }
    if (stockId === null) return answered({ kind: 'kept', code, ...keptAs(meaning) });
    const thing = (await walkOf(tx, stocktake)).things.find((each) => each.stockId === stockId);
    if (!thing) throw new Error(`Thing ${stockId} was seen and is not in its walk.`);
    return answered({ kind: 'thing', thing, again: before !== null });
  });
};

const answered = (answer: Sighting) => ok({ answer, replayed: false });

function keptAs(meaning: ScanMeaning): { means: KeptMeaning; says: string } {
  if (meaning.kind === 'product') return { means: 'product', says: meaning.name };
  if (meaning.kind === 'unknown-product') return { means: 'unknown-product', says: '' };
  if (meaning.kind === 'not-in-book') return { means: 'not-in-book', says: '' };
  return { means: 'unknown', says: '' };
}
