import type { Command } from '@/app/_server/act';
import { indexProduct } from '@/app/_server/find/index-product';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type ProductFields, productRow } from '@/app/_server/products/product-fields';
import { err, ok } from '@/shared/result/result';

/** Changes what the book knows of a product. The unit its stock is counted in stays while there is stock. */
export const changeProduct: Command<ProductFields & { productId: number }, { productId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'product-changed', request: input }, async (pen) => {
    const before = await pen.tx.product.findUnique({ where: { id: input.productId } });
    if (!before) return err({ code: 'not-found' });
    const row = await productRow(pen.tx, input);
    if (!row.ok) return row;
    if (row.value.unit !== before.unit) {
      const container = await pen.tx.container.findFirst({
        where: { productId: before.id },
        select: { stockId: true },
      });
      if (container) return err({ code: 'has-stock', field: 'unit', facts: { name: before.name } });
    }
    const changed = Object.entries(row.value).filter(([key, value]) => before[key as keyof typeof before] !== value);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    await pen.tx.product.update({ where: { id: before.id }, data: row.value, select: { id: true } });
    const codes = await pen.tx.code.findMany({ where: { productId: before.id }, select: { value: true } });
    await indexProduct(
      pen.tx,
      before.id,
      row.value,
      codes.map((code) => code.value),
    );
    const systems = await pen.tx.resinSystem.findMany({
      where: { id: { in: [before.systemId, row.value.systemId].filter((id) => id !== null) } },
      select: { id: true, name: true },
    });
    const plain = (key: string, value: unknown) =>
      (key === 'systemId' ? systems.find(({ id }) => id === value)?.name : value) ?? 'none';
    const said = changed.map(
      ([key, value]) => `${key}: ${plain(key, before[key as keyof typeof before])} → ${plain(key, value)}`,
    );
    await pen.enter({ productId: before.id, why: said.join('; ').slice(0, 2000) }, { productId: before.id });
    return ok({ productId: before.id });
  });
