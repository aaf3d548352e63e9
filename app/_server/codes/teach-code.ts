import type { Command } from '@/app/_server/act';
import { refuseTaughtCode } from '@/app/_server/codes/refuse-taught-code';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** A code, in the canonical form `readScan` gives, and the one thing it shall mean. */
export type TeachCode = {
  code: string;
  means: { productId: number; packageSize?: number } | { stockLabel: string } | { placeLabel: string };
};

/** Teaches a code once and for good. A code that means something already is refused with what it means. */
export const teachCode: Command<TeachCode, { means: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'code-taught', request: input }, async (pen) => {
    if (parseOwnLabel(input.code).ok) return err({ code: 'own-label-is-not-taught', field: 'code' });
    const refusal = await refuseTaughtCode(pen.tx, input.code);
    if (refusal) return err(refusal);
    const target = await findTarget();
    if (!target) return err({ code: 'not-found', field: 'means' });
    const { name, ...ids } = target;
    const answer = { means: name };
    await pen.enter({ productId: ids.productId, placeId: ids.placeId, why: `code ${input.code} is ${name}` }, answer);
    await pen.tx.code.create({ data: { value: input.code, ...ids, entryId: pen.entryId }, select: { id: true } });
    return ok(answer);

    async function findTarget() {
      const { means } = input;
      if ('productId' in means) {
        const product = await pen.tx.product.findUnique({
          where: { id: means.productId },
          select: { id: true, name: true, packageSize: true },
        });
        const packageSize = means.packageSize === undefined ? product?.packageSize : BigInt(means.packageSize);
        return product ? { name: product.name, productId: product.id, packageSize } : undefined;
      }
      if ('placeLabel' in means) {
        const place = await pen.tx.place.findUnique({
          where: { label: means.placeLabel },
          select: { id: true, name: true },
        });
        return place ? { name: place.name, placeId: place.id } : undefined;
      }
      const stock = await pen.tx.stock.findUnique({
        where: { label: means.stockLabel },
        select: { id: true, label: true },
      });
      return stock?.label ? { name: stock.label, stockId: stock.id } : undefined;
    }
  });
