import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** How the rings of a piece meet its face; empty where nobody knows. */
export type Sawn = '' | 'flat' | 'quarter' | 'mixed';

const SAY: Record<Sawn, string> = {
  '': 'not known',
  flat: 'flat sawn',
  quarter: 'quarter sawn',
  mixed: 'mixed, flat and quarter',
};

/** Keeps how a piece was sawn. */
export const noteSawn: Command<{ label: string; sawn: Sawn }, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'sawn-noted', request: input }, async (pen) => {
    const { label, sawn } = input;
    const row = await pen.tx.piece.findFirst({ where: { stock: { label } }, select: { stockId: true, sawn: true } });
    if (!row) return err({ code: 'not-found', facts: { label } });
    if (row.sawn === sawn) return err({ code: 'changes-nothing' });
    await pen.tx.piece.update({ where: { stockId: row.stockId }, data: { sawn }, select: { stockId: true } });
    await pen.enter({ stockId: row.stockId, why: SAY[sawn] }, { label });
    return ok({ label });
  });
