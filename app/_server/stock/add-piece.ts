import type { Pen } from '@/app/_server/ledger/write-entry';
import { labelKindOf } from '@/app/_server/stock/label-kind-of';
import { indexPiece, type PieceColumns } from '@/app/_server/stock/piece-fields';
import type { PieceForm } from '@/shared/wood/piece';

type NewPiece = Omit<PieceColumns, 'sapwoodNm'> & {
  sapwoodNm?: bigint | null;
  form: PieceForm;
  costMinor: bigint | null;
  currency: string | null;
  receivedOn: string;
  sellerName?: string;
  sellerVolumeMm3?: bigint | null;
  /** The act that made it out of another piece. */
  cutId?: number;
};

export type AddedPiece = { stockId: number; label: string };

/** A new piece with a label of its own, findable; it is in no place and its quantity is nothing until it is moved. */
export async function addPiece(pen: Pen, piece: NewPiece): Promise<AddedPiece> {
  const label = await pen.mintLabel(labelKindOf(piece.form));
  const { id: stockId } = await pen.tx.stock.create({ data: { kind: 'piece', label }, select: { id: true } });
  await pen.tx.piece.create({ data: { ...piece, stockId }, select: { stockId: true } });
  await indexPiece(pen.tx, { stockId });
  return { stockId, label };
}
