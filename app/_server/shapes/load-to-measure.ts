import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { markSelect, readMarks } from '@/app/_server/shapes/kept-marks';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import { err, ok, type Result } from '@/shared/result/result';

export type ToMeasure = { stockId: number; marks: PieceMarks };

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
      stock: { select: { quantity: true } },
      marks: { where: { removedById: null }, select: markSelect },
    },
  });
  if (!row) return err({ code: 'not-found', facts: { label } });
  if (row.stock.quantity === 0n) return err({ code: 'no-longer-here', facts: { label } });
  if (row.form === 'pack') return err({ code: 'pack-has-no-outline', facts: { label } });
  if (row.shapeId !== null && why.trim() === '') return err({ code: 'reason-needed', field: 'why' });
  return ok({ stockId: row.stockId, marks: readMarks(row.marks) });
}
