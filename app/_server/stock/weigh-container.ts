import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { loadContainer } from '@/app/_server/stock/load-container';
import { err, ok } from '@/shared/result/result';

/** What is really left in a container, in its small unit, as weighed or measured. */
export const weighContainer: Command<{ label: string; left: number; why: string }, { label: string; delta: number }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'weighed', request: input }, async (pen) => {
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found' });
    if (!Number.isSafeInteger(input.left) || input.left < 0) return err({ code: 'not-an-exact-amount', field: 'left' });
    // A tin may hold a little more than its label says; twice as much is a slipped digit.
    if (input.left > line.size * 2) return err({ code: 'unit-does-not-fit', field: 'left' });
    const delta = input.left - line.left;
    await pen.enter({ why: input.why, productId: line.productId }, { label: line.label, delta });
    const moved = await pen.move(line.stockId, { quantityDelta: delta });
    return moved.ok ? ok({ label: line.label, delta }) : moved;
  });
