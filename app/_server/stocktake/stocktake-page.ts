import { loadStocktake, type StocktakeHead } from '@/app/_server/stocktake/load-stocktake';
import type { PostedStocktake } from '@/app/_server/stocktake/post-stocktake';
import { type Walked, walkOf } from '@/app/_server/stocktake/walk-of';
import type { OpenBook } from '@/prisma/open-book';

export type StocktakePage = {
  stocktake: StocktakeHead;
  /** While it goes on. */
  walk: Walked | null;
  /** Once it was posted. */
  posted: PostedStocktake | null;
  /** The codes that were read on it and mean no thing of this book. */
  codes: string[];
};

/** One stocktake by its number: as it goes on, or what was posted. */
export async function stocktakePage(book: OpenBook, number: number): Promise<StocktakePage | undefined> {
  const stocktake = await loadStocktake(book.read, number);
  if (!stocktake) return undefined;
  const { closed } = stocktake;
  const codes = await book.read.stocktakeLine.findMany({
    where: { stocktakeId: stocktake.id, stockId: null },
    orderBy: { seenAt: 'asc' },
    select: { code: true },
  });
  return {
    stocktake,
    walk: closed ? null : await walkOf(book.read, stocktake),
    posted: closed?.posted ? (JSON.parse(closed.answer) as PostedStocktake) : null,
    codes: codes.map(({ code }) => code),
  };
}
