import type { Command } from '@/app/_server/act';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { flagsOfMarks } from '@/app/_server/shapes/flags-of-marks';
import { markColumns } from '@/app/_server/shapes/kept-marks';
import { nextMarkId } from '@/app/_server/shapes/next-mark-id';
import { lies } from '@/app/_server/shapes/off-the-wood';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { checkDefect } from '@/shared/outline/check-defect';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { NewMark } from '@/shared/outline/piece-marks';
import { err, ok } from '@/shared/result/result';
import type { PieceFlag } from '@/shared/wood/piece';

/** Marks to be put on a piece, and numbers of marks to be taken off it, in one act. A change is one of each. */
export type ChangeMarks = {
  label: string;
  add: NewMark[];
  remove: number[];
  why: string;
  /** The measuring they were drawn on, null where there was none; not looked at where it is left out. */
  shapeId?: number | null;
};

export const changeMarks: Command<ChangeMarks, { label: string; added: number[]; flagged: PieceFlag[] }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'piece-marked', request: input }, async (pen) => {
    if (input.add.length + input.remove.length === 0) return err({ code: 'changes-nothing' });
    const line = await loadPiece(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', facts: { label: input.label } });
    if (!line.facts.inStock) return err({ code: 'no-longer-here', facts: { label: input.label } });
    if (line.form === 'pack') return err({ code: 'pack-has-no-outline', facts: { label: input.label } });
    if (input.shapeId !== undefined && input.shapeId !== (line.shape?.id ?? null))
      return err({ code: 'measured-meanwhile', facts: { label: input.label } });
    const outline = outlineOfPiece(line);
    if (!outline.ok) return err({ code: 'no-outline', facts: { why: outline.error.code } });
    for (const mark of input.add) {
      const refused = refuseMark(outline.value, mark);
      if (refused) return err(refused);
    }
    const { stockId } = line;
    const found = await pen.tx.mark.count({
      where: { id: { in: input.remove }, pieceId: stockId, removedById: null },
    });
    if (found !== new Set(input.remove).size) return err({ code: 'mark-gone' });
    const said = [...input.add.map(sayMark), ...(found > 0 ? [`${found} taken off`] : [])].join('; ');
    const first = await nextMarkId(pen.tx);
    const flagged = flagsOfMarks(input.add.map(kindOf)).filter((flag) => !line.facts.flags.includes(flag));
    const answer = { label: input.label, added: input.add.map((_, nr) => first + nr), flagged };
    await pen.enter({ stockId, why: `${said}. ${input.why.trim()}`.trim() }, answer);
    await pen.tx.mark.createMany({
      data: input.add.map((mark, nr) => ({
        id: first + nr,
        pieceId: stockId,
        entryId: pen.entryId,
        ...markColumns(mark),
      })),
    });
    await pen.tx.mark.updateMany({ where: { id: { in: input.remove } }, data: { removedById: pen.entryId } });
    if (flagged.length > 0) {
      const flags = [...line.facts.flags, ...flagged].sort().join(',');
      await pen.tx.piece.update({ where: { stockId }, data: { flags }, select: { stockId: true } });
    }
    return ok(answer);
  });

/** Why a mark cannot be on this wood, or undefined. */
function refuseMark(outline: Outline, mark: NewMark): Refusal | undefined {
  const { left, right } = boundsOf(outline.ring);
  if (mark.is === 'end-check') {
    const fits = mark.depth > 0 && mark.depth / 1000 < right - left;
    return fits ? undefined : { code: 'end-check-does-not-fit', field: 'depth' };
  }
  if (mark.is === 'strap') {
    return lies(outline, mark) ? undefined : { code: 'mark-off-the-wood', field: 'place', facts: { point: 0 } };
  }
  const checked = checkDefect(outline, mark);
  if (checked.ok) return undefined;
  const { code, point } = checked.error;
  return { code: 'mark-off-the-wood', field: 'place', facts: { why: code, point } };
}

const kindOf = (mark: NewMark) => (mark.is === 'defect' ? mark.kind : mark.is);
const sayMark = (mark: NewMark) => (mark.is === 'defect' ? mark.kind : mark.is === 'strap' ? 'strap' : 'end check');
