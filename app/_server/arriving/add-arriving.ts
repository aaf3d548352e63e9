import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

export type AddArriving = {
  /** None where it is wood, or anything the book has no product for: then in words. */
  productId?: number;
  words: string;
  /** In all, in the product's small unit; pieces where it is no product. */
  amount: number;
  dueOn: CalendarDate;
  supplier: string;
  /** What all of it costs, in the book's money. */
  costMinor?: number;
};

/** Writes down what was ordered and when it is due: it counts for needs from that day on. */
export const addArriving: Command<AddArriving, { entryId: number; words: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'arriving-added', request: input }, async (pen) => {
    const { productId, amount, dueOn, costMinor } = input;
    if (!Number.isSafeInteger(amount) || amount <= 0) return err({ code: 'not-an-exact-amount', field: 'amount' });
    if (costMinor !== undefined && (!Number.isSafeInteger(costMinor) || costMinor < 0))
      return err({ code: 'outside-range', field: 'cost' });
    const product =
      productId === undefined
        ? null
        : await pen.tx.product.findUnique({ where: { id: productId }, select: { name: true, unit: true } });
    if (productId !== undefined && !product) return err({ code: 'not-found', field: 'productId' });
    const unit = (product?.unit ?? 'piece') as StockUnit;
    const name = product?.name ?? input.words.trim();
    if (name === '') return err({ code: 'not-found', field: 'words' });
    const words = `${printQuantityExact(amountOf(unit, amount), unit)} of ${name}, due ${dueOn}`;
    const answer = { entryId: pen.entryId, words };
    await pen.enter({ productId, why: words }, answer);
    await pen.tx.arriving.create({
      data: {
        entryId: pen.entryId,
        productId: productId ?? null,
        words: input.words.trim(),
        amount: BigInt(amount),
        dueOn,
        supplier: input.supplier.trim(),
        costMinor: costMinor === undefined ? null : BigInt(costMinor),
        currency: costMinor === undefined ? null : pen.book.currency,
      },
      select: { id: true },
    });
    return ok(answer);
  });
