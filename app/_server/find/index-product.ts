import { indexWords } from '@/app/_server/find/search-words';
import type { WriteTransaction } from '@/prisma/open-book';
import { isMaterialKind, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';

/** Makes a product findable by its name, its maker, what kind of material it is ("hardener") and the codes that mean it. */
export function indexProduct(
  tx: WriteTransaction,
  productId: number,
  product: { name: string; maker: string; kind: string },
  codes: string[],
): Promise<void> {
  const kind = isMaterialKind(product.kind) ? MATERIAL_KINDS[product.kind] : '';
  return indexWords(tx, 'product', productId, [product.name, product.maker, kind, ...codes]);
}
