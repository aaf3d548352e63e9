import type { Command } from '@/app/_server/act';
import { STILL_TO_COME } from '@/app/_server/arriving/list-arriving';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** `came`: what arrived is scanned into the book under Arrive; `never`: it is not coming any more. */
export type CloseArriving = { arrivingId: number; how: 'came' | 'never'; why: string };

/** Closes an order: it came, and is in the book as stock now, or it never will. It no longer counts for needs. */
export const closeArriving: Command<CloseArriving, { entryId: number; name: string }> = (book, by, input) =>
  writeEntry(
    book,
    { ...by, kind: input.how === 'came' ? 'arriving-came' : 'arriving-given-up', request: input },
    async (pen) => {
      const order = await pen.tx.arriving.findFirst({
        where: { AND: [{ id: input.arrivingId }, STILL_TO_COME] },
        select: { id: true, productId: true, words: true, supplier: true, product: { select: { name: true } } },
      });
      if (!order) return err({ code: 'arrival-closed' });
      const why = input.why.trim();
      if (input.how === 'never' && why === '') return err({ code: 'reason-needed', field: 'why' });
      const name = order.product?.name ?? order.words;
      const answer = { entryId: pen.entryId, name };
      await pen.enter({ productId: order.productId, why: [name, why].filter(Boolean).join(': ') }, answer);
      await pen.tx.arriving.update({
        where: { id: order.id },
        data: { closedById: pen.entryId },
        select: { id: true },
      });
      return ok(answer);
    },
  );
