import { type StocktakeHead, stocktakeHead, stocktakeSelect } from '@/app/_server/stocktake/load-stocktake';
import { openStocktake } from '@/app/_server/stocktake/open-stocktakes';
import type { OpenBook } from '@/prisma/open-book';

/** A stocktake in a list, and how many things or codes were seen on it. */
export type StocktakeLine = StocktakeHead & { seen: number };

const MOST_CLOSED = 30;

/** The stocktakes that go on, and the newest of those that are closed. */
export async function listStocktakes(book: OpenBook): Promise<{ open: StocktakeLine[]; closed: StocktakeLine[] }> {
  const select = { ...stocktakeSelect, _count: { select: { lines: true } } } as const;
  const [open, closed] = await Promise.all([
    book.read.stocktake.findMany({ where: openStocktake, orderBy: { id: 'asc' }, select }),
    book.read.stocktake.findMany({ where: { NOT: openStocktake }, orderBy: { id: 'desc' }, take: MOST_CLOSED, select }),
  ]);
  const line = (row: (typeof open)[number]) => ({ ...stocktakeHead(row), seen: row._count.lines });
  return { open: open.map(line), closed: closed.map(line) };
}
