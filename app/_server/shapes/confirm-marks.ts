import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { markSelect } from '@/app/_server/shapes/kept-marks';
import { nextMarkId } from '@/app/_server/shapes/next-mark-id';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { err, ok } from '@/shared/result/result';

/** Somebody looked, and the marks made on an earlier measuring lie where they should on the one that counts. */
export type ConfirmMarks = {
  label: string;
  /** The measuring they were looked at on. */
  shapeId: number;
};

/** Puts each of them on again as it lies, so that from now on it belongs to the measuring that counts. */
export const confirmMarks: Command<ConfirmMarks, { label: string; confirmed: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'marks-confirmed', request: input }, async (pen) => {
    const { label, shapeId } = input;
    const line = await loadPiece(pen.tx, label);
    if (!line) return err({ code: 'not-found', facts: { label } });
    if (!line.facts.inStock) return err({ code: 'no-longer-here', facts: { label } });
    if (line.shape?.id !== shapeId) return err({ code: 'measured-meanwhile', facts: { label } });
    const before = line.marksOfBefore;
    if (before.length === 0) return err({ code: 'changes-nothing' });
    const rows = await pen.tx.mark.findMany({ where: { id: { in: [...before] } }, select: markSelect });
    const why = `${before.length} ${before.length === 1 ? 'mark' : 'marks'}`;
    const answer = { label, confirmed: before.length };
    await pen.enter({ stockId: line.stockId, why }, answer);
    const first = await nextMarkId(pen.tx);
    await pen.tx.mark.createMany({
      data: rows.map((row, nr) => ({ ...row, id: first + nr, pieceId: line.stockId, entryId: pen.entryId })),
    });
    await pen.tx.mark.updateMany({ where: { id: { in: [...before] } }, data: { removedById: pen.entryId } });
    return ok(answer);
  });
