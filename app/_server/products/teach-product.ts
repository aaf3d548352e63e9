import type { Command } from '@/app/_server/act';
import { refuseTaughtCode } from '@/app/_server/codes/refuse-taught-code';
import { indexProduct } from '@/app/_server/find/index-product';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type ProductFields, productRow } from '@/app/_server/products/product-fields';
import { err, ok } from '@/shared/result/result';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** A product the book did not know, with the code on its label where there is one. */
export type TeachProduct = ProductFields & { code?: string };

/** Teaches the book a product, and what the code on its container means. */
export const teachProduct: Command<TeachProduct, { productId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'product-taught', request: input }, async (pen) => {
    const row = await productRow(pen.tx, input);
    if (!row.ok) return row;
    const twin = await pen.tx.product.findFirst({
      where: { name: row.value.name, maker: row.value.maker },
      select: { id: true },
    });
    if (twin) return err({ code: 'name-taken', field: 'name', facts: { name: row.value.name } });
    if (input.code) {
      if (parseOwnLabel(input.code).ok) return err({ code: 'own-label-is-not-taught', field: 'code' });
      const refusal = await refuseTaughtCode(pen.tx, input.code);
      if (refusal) return err(refusal);
    }
    const { id: productId } = await pen.tx.product.create({
      data: { ...row.value, createdAt: pen.now },
      select: { id: true },
    });
    await indexProduct(pen.tx, productId, row.value, input.code ? [input.code] : []);
    const answer = { productId, name: row.value.name };
    await pen.enter({ productId, why: input.code ? `code ${input.code}` : '' }, answer);
    if (input.code) {
      await pen.tx.code.create({
        data: { value: input.code, productId, packageSize: row.value.packageSize, entryId: pen.entryId },
        select: { id: true },
      });
    }
    return ok(answer);
  });
