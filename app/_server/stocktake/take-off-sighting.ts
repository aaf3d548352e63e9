import type { Command } from '@/app/_server/act';
import { loadStocktake } from '@/app/_server/stocktake/load-stocktake';
import { err, ok } from '@/shared/result/result';

/** Which sighting: of a thing, or of a code that was kept. */
export type TakeOffSighting = { stocktake: number; stockId?: number; lineId?: number };

/** Takes a sighting off a walk: scanned by mistake. A draft: no entry. */
export const takeOffSighting: Command<TakeOffSighting, { taken: true }> = (book, _, input) =>
  book.write(async (tx) => {
    const stocktake = await loadStocktake(tx, input.stocktake);
    if (!stocktake) return err({ code: 'not-found' as const });
    if (stocktake.closed) return err({ code: 'stocktake-closed' as const });
    const which = input.stockId === undefined ? { id: input.lineId ?? 0, stockId: null } : { stockId: input.stockId };
    const { count } = await tx.stocktakeLine.deleteMany({ where: { stocktakeId: stocktake.id, ...which } });
    return count === 0
      ? err({ code: 'not-seen-yet' as const })
      : ok({ answer: { taken: true as const }, replayed: false });
  });
