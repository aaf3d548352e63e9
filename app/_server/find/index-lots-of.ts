import { indexWords } from '@/app/_server/find/search-words';
import type { WriteTransaction } from '@/prisma/open-book';

/** Makes every lot of a product findable by the product's present name and its own code. */
export async function indexLotsOf(tx: WriteTransaction, productId: number): Promise<void> {
  const product = await tx.product.findUniqueOrThrow({ where: { id: productId }, select: { name: true, maker: true } });
  const lots = await tx.lot.findMany({ where: { productId }, select: { stockId: true, code: true } });
  for (const lot of lots) {
    await indexWords(tx, 'lot', lot.stockId, [product.name, product.maker, lot.code ?? 'unmarked']);
  }
}
