import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { err, ok } from '@/shared/result/result';
import type { PieceFlag } from '@/shared/wood/piece';

/** The bands of a slab are cut, and it holds: it stays one piece and loses them. */
export const cutStraps: Command<{ label: string; why: string }, { label: string; unflagged: PieceFlag[] }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'straps-cut', request: input }, async (pen) => {
    const line = await loadPiece(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', facts: { label: input.label } });
    const { stockId, label } = line;
    if (!line.facts.inStock) return err({ code: 'no-longer-here', facts: { label } });
    const bands = line.marks.straps.map(({ id }) => id);
    if (bands.length === 0 && !line.facts.flags.includes('strapped')) {
      return err({ code: 'no-straps', facts: { label } });
    }
    const unflagged = line.facts.flags.filter((flag) => flag === 'strapped');
    await pen.enter({ stockId, why: input.why.trim() }, { label, unflagged });
    await pen.tx.mark.updateMany({ where: { id: { in: bands } }, data: { removedById: pen.entryId } });
    const flags = line.facts.flags.filter((flag) => flag !== 'strapped');
    await pen.tx.piece.update({
      where: { stockId },
      data: { flags: flags.sort().join(',') },
      select: { stockId: true },
    });
    return ok({ label, unflagged });
  });
