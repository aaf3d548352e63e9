import { indexWords } from '@/app/_server/find/search-words';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import { type Grain, MOST_FLITCH_NUMBER, PIECE_FLAGS, type PieceFlag, type Surfacing } from '@/shared/wood/piece';
import { quarterThickness } from '@/shared/wood/quarter-thickness';

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
} & SoldFacts;

/** What papers and sellers say of wood; what is not given is kept empty. */
export type SoldFacts = {
  /** Where the tree stood. */
  origin?: string;
  /** How deep the sapwood runs in from the edges. */
  sapwoodNm?: number;
  /** Thickness as boards are sold, in quarters of an inch. */
  quarters?: number;
  surfacing?: Surfacing;
  /** Of a sheet: which way the grain of its faces runs, and what each face is. */
  grain?: Grain;
  faceA?: string;
  faceB?: string;
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
  if (fields.quarters !== undefined && !quarterThickness(fields.quarters)) {
    return { code: 'outside-range', field: 'quarters' };
  }
  const sapwood = fields.sapwoodNm ?? 0;
  if (!Number.isSafeInteger(sapwood) || sapwood < 0 || sapwood > THICKEST_NM) {
    return { code: 'outside-range', field: 'sapwood' };
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
    origin: fields.origin?.trim() ?? '',
    sapwoodNm: fields.sapwoodNm === undefined ? null : BigInt(fields.sapwoodNm),
    quarters: fields.quarters ?? null,
    surfacing: fields.surfacing ?? '',
    grain: fields.grain ?? '',
    faceA: fields.faceA?.trim() ?? '',
    faceB: fields.faceB?.trim() ?? '',
  };
}

/** Those columns that are not its sizes, to be read from another piece. */
export const FACT_COLUMNS = {
  species: true,
  thicknessNm: true,
  flags: true,
  flitch: true,
  flitchNumber: true,
  note: true,
  origin: true,
  quarters: true,
  surfacing: true,
  grain: true,
  faceA: true,
  faceB: true,
} as const;

export type PieceColumns = ReturnType<typeof pieceColumns>;

/** The flags as their column holds them, in the order they are always said in. */
export function keptFlags(column: string): PieceFlag[] {
  const kept = new Set(column.split(','));
  return PIECE_FLAGS.filter((flag) => kept.has(flag));
}

const GRAIN_SEARCHED: Readonly<Record<string, string>> = {
  length: 'grain length long',
  width: 'grain width cross',
  none: 'no grain',
};

/** Makes a piece that is written findable by what a maker asks for: wood, form, label, flitch, origin, 8/4, grain, faces. */
export async function indexPiece(tx: WriteTransaction, { stockId }: { stockId: number }): Promise<void> {
  const { stock, quarters, grain, form, ...row } = await tx.piece.findUniqueOrThrow({
    where: { stockId },
    select: {
      species: true,
      form: true,
      flitch: true,
      origin: true,
      quarters: true,
      surfacing: true,
      grain: true,
      faceA: true,
      faceB: true,
      stock: { select: { label: true } },
    },
  });
  const searched = [
    ...Object.values(row),
    form === 'pack' ? 'pack of boards' : form,
    stock.label ?? '',
    quarters === null ? '' : `${quarters}/4`,
    GRAIN_SEARCHED[grain] ?? '',
  ];
  await indexWords(tx, 'piece', stockId, searched);
}
