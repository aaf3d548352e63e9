import type { OpenBook } from '@/prisma/open-book';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What has to be known of a container to read what was typed of it. */
export type Countable = { unit: StockUnit; tareMg: number | null; densityGramsPerLitre: number | null };

/** How a container is counted; undefined where there is none. */
export async function countable(book: OpenBook, stockId: number): Promise<Countable | undefined> {
  const row = await book.read.container.findUnique({
    where: { stockId },
    select: { tareMg: true, product: { select: { unit: true, tareMg: true, densityGramsPerLitre: true } } },
  });
  if (!row) return undefined;
  const tareMg = row.tareMg ?? row.product.tareMg;
  return {
    unit: row.product.unit as StockUnit,
    tareMg: tareMg === null ? null : Number(tareMg),
    densityGramsPerLitre: row.product.densityGramsPerLitre,
  };
}
