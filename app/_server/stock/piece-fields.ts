import { indexWords } from '@/app/_server/find/search-words';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import { MOST_FLITCH_NUMBER, PIECE_FLAGS, type PieceFlag } from '@/shared/wood/piece';

/** What the book knows of a piece of wood that can be put right. Lengths in nanometres (1/64 in is 396 875). */
export type PieceFields = {
  species: string;
  lengthNm: number;
  widthStartNm: number;
  widthMiddleNm: number;
  widthEndNm: number;
  thicknessNm: number;
  flags: PieceFlag[];
  flitch: string;
  /** Where in its flitch it is, as sawn. */
  flitchNumber?: number;
  note: string;
};

/** The measures of a piece, each the name of its field. */
export const PIECE_SIZES = ['lengthNm', 'widthStartNm', 'widthMiddleNm', 'widthEndNm', 'thicknessNm'] as const;

/** Longest thing a workshop of this size takes in: 20 m; thickest: 1 m. Beyond it, a unit was mistaken. */
const LONGEST_NM = 20_000_000_000;
const THICKEST_NM = 1_000_000_000;

/** A measure that cannot be one, or a number in the flitch that one of so many cannot have; else undefined. */
export function refuseFields(fields: PieceFields, count = 1): Refusal | undefined {
  for (const field of PIECE_SIZES) {
    const most = field === 'thicknessNm' ? THICKEST_NM : LONGEST_NM;
    if (!Number.isSafeInteger(fields[field]) || fields[field] <= 0 || fields[field] > most) {
      return { code: 'outside-range', field };
    }
  }
  const first = fields.flitchNumber;
  if (first === undefined) return undefined;
  const isNumber = Number.isInteger(first) && first >= 1 && first + count - 1 <= MOST_FLITCH_NUMBER;
  return isNumber ? undefined : { code: 'outside-range', field: 'flitchNumber' };
}

/** The fields as the columns of a piece hold them. */
export function pieceColumns(fields: PieceFields) {
  return {
    species: fields.species.trim(),
    lengthNm: BigInt(fields.lengthNm),
    widthStartNm: BigInt(fields.widthStartNm),
    widthMiddleNm: BigInt(fields.widthMiddleNm),
    widthEndNm: BigInt(fields.widthEndNm),
    thicknessNm: BigInt(fields.thicknessNm),
    flags: [...new Set(fields.flags)].sort().join(','),
    flitch: fields.flitch.trim(),
    flitchNumber: fields.flitchNumber ?? null,
    note: fields.note.trim(),
  };
}

export type PieceColumns = ReturnType<typeof pieceColumns>;

/** The flags as their column holds them, in the order they are always said in. */
export function keptFlags(column: string): PieceFlag[] {
  const kept = new Set(column.split(','));
  return PIECE_FLAGS.filter((flag) => kept.has(flag));
}

/** Makes a piece findable by its wood, its form, its flitch and its label. */
export async function indexPiece(
  tx: WriteTransaction,
  piece: { stockId: number; species: string; form: string; flitch: string; label: string },
): Promise<void> {
  await indexWords(tx, 'piece', piece.stockId, [piece.species, piece.form, piece.flitch, piece.label]);
}
