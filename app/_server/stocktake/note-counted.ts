import type { Command } from '@/app/_server/act';
import { loadStocktake } from '@/app/_server/stocktake/load-stocktake';
import { type WalkThing, walkOf } from '@/app/_server/stocktake/walk-of';
import { err, ok } from '@/shared/result/result';

/** What is in a container that was seen, in its small unit; `grossMg` where it stood on the scale. Null takes it back. */
export type NoteCounted = { stocktake: number; stockId: number; counted: number | null; grossMg: number | null };

/** Notes what was weighed or counted in a container on the walk. It is seen by that, now. A draft: no entry. */
export const noteCounted: Command<NoteCounted, { thing: WalkThing }> = (book, by, input) =>
  book.write(async (tx) => {
    const stocktake = await loadStocktake(tx, input.stocktake);
    if (!stocktake) return err({ code: 'not-found' as const });
    if (stocktake.closed) return err({ code: 'stocktake-closed' as const });
    const { counted, grossMg } = input;
    const container = await tx.container.findUnique({
      where: { stockId: input.stockId },
      select: { size: true, stock: { select: { label: true } } },
    });
    if (!container) return err({ code: 'not-found' as const });
    if (counted !== null && (!Number.isSafeInteger(counted) || counted < 0))
      return err({ code: 'not-an-exact-amount' as const, field: 'amount' });
    // A tin may hold a little more than its label says; twice as much is a slipped digit.
    if (counted !== null && counted > Number(container.size) * 2)
      return err({ code: 'unit-does-not-fit' as const, field: 'amount' });
    const before = await tx.stocktakeLine.findFirst({
      where: { stocktakeId: stocktake.id, stockId: input.stockId, code: '' },
      select: { id: true },
    });
    if (!before) return err({ code: 'not-seen-yet' as const, facts: { label: container.stock.label } });
    await tx.stocktakeLine.update({
      where: { id: before.id },
      data: { counted, grossMg, seenAt: by.now, who: by.who.who },
      select: { id: true },
    });
    const thing = (await walkOf(tx, stocktake)).things.find((each) => each.stockId === input.stockId);
    if (!thing) throw new Error(`Thing ${input.stockId} was counted and is not in its walk.`);
    return ok({ answer: { thing }, replayed: false });
  });
