import type { OpenBook } from '@/prisma/open-book';

/** A lot that another can be mixed with. */
export type OtherLot = { lotId: number; words: string };

const MOST = 60;

/** The lots of the other part of a product's system, the newest first; none where it is no part of one. */
export async function lotsOfOtherPart(book: OpenBook, productId: number): Promise<OtherLot[]> {
  const product = await book.read.product.findUnique({
    where: { id: productId },
    select: { systemId: true, part: true },
  });
  if (!product?.systemId || !product.part) return [];
  const lots = await book.read.lot.findMany({
    where: { product: { systemId: product.systemId, part: { not: product.part } } },
    orderBy: { stockId: 'desc' },
    take: MOST,
    select: { stockId: true, code: true, product: { select: { name: true } } },
  });
  return lots.map((lot) => ({
    lotId: lot.stockId,
    words: `${lot.product.name}, ${lot.code ? `lot ${lot.code}` : 'a lot without a code'}`,
  }));
}
