import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** Takes what is left of a container, or a piece, off the shelf for good: thrown away, given away, lost. */
export const discard: Command<{ label: string; why: string }, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'discarded', request: input }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const row = await pen.tx.stock.findUnique({ where: { label: input.label }, select: { id: true, quantity: true } });
    if (!row) return err({ code: 'not-found' });
    if (row.quantity === 0n) return err({ code: 'already-empty', facts: { label: input.label } });
    await pen.enter({ why }, { label: input.label });
    const moved = await pen.move(row.id, { quantityDelta: -Number(row.quantity) });
    return moved.ok ? ok({ label: input.label }) : moved;
  });
