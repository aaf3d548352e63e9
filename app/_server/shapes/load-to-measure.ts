import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { markSelect, readMarks } from '@/app/_server/shapes/kept-marks';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import { err, ok, type Result } from '@/shared/result/result';

/** Length and widths in nanometres, as JSON can hold them. */
export type KeptSizes = { lengthNm: number; widthStartNm: number; widthMiddleNm: number; widthEndNm: number };

/** `before`: the sizes it had, so that the measuring can be undone. */
export type ToMeasure = { stockId: number; marks: PieceMarks; before: KeptSizes };

/** A piece that may be measured: in the shop, one whole thing, and with a reason where it was measured before. */
export async function loadToMeasure(
  pen: Pen,
  { label, why }: { label: string; why: string },
): Promise<Result<ToMeasure, Refusal>> {
  const row = await pen.tx.piece.findFirst({
    where: { stock: { label } },
    select: {
      stockId: true,
      form: true,
      shapeId: true,
      lengthNm: true,
      widthStartNm: true,
      widthMiddleNm: true,
      widthEndNm: true,
      stock: { select: { quantity: true } },
      marks: { where: { removedById: null }, select: markSelect },
    },
  });
  if (!row) return err({ code: 'not-found', facts: { label } });
  if (row.stock.quantity === 0n) return err({ code: 'no-longer-here', facts: { label } });
  if (row.form === 'pack') return err({ code: 'pack-has-no-outline', facts: { label } });
  if (row.shapeId !== null && why.trim() === '') return err({ code: 'reason-needed', field: 'why' });
  const before = {
    lengthNm: Number(row.lengthNm),
    widthStartNm: Number(row.widthStartNm),
    widthMiddleNm: Number(row.widthMiddleNm),
    widthEndNm: Number(row.widthEndNm),
  };
  return ok({ stockId: row.stockId, marks: readMarks(row.marks), before });
}
