import type { OpenBook } from '@/prisma/open-book';
import type { StockUnit } from '@/shared/units/stock-unit';

const MOST = 2000;

/** The products of the book by name, for a list to choose from. */
export async function productChoices(book: OpenBook): Promise<{ id: number; name: string; unit: StockUnit }[]> {
  const rows = await book.read.product.findMany({
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: MOST,
    select: { id: true, name: true, unit: true },
  });
  return rows.map((each) => ({ ...each, unit: each.unit as StockUnit }));
}
