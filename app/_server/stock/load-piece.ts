import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import type { CurrencyCode } from '@/shared/units/currency';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import type { PieceFacts } from '@/shared/wood/judge-piece';
import { PIECE_FLAGS, type PieceFlag, type PieceForm } from '@/shared/wood/piece';

/** The columns of a piece row that a list line and a verdict need. */
export const pieceSelect = {
  stockId: true,
  form: true,
  species: true,
  lengthNm: true,
  widthStartNm: true,
  widthMiddleNm: true,
  widthEndNm: true,
  thicknessNm: true,
  flags: true,
  flitch: true,
  flitchNumber: true,
  costMinor: true,
  currency: true,
  receivedOn: true,
  note: true,
  readings: { select: { takenOn: true, mcTenths: true, meter: true, spot: true }, orderBy: { id: 'desc' } },
  stock: {
    select: {
      label: true,
      quantity: true,
      hold: true,
      ownerJob: { select: { id: true, name: true } },
      place: { select: { name: true, label: true, parent: { select: { name: true } } } },
    },
  },
} as const;

export type PieceRow = {
  stockId: number;
  form: string;
  species: string;
  lengthNm: bigint;
  widthStartNm: bigint;
  widthMiddleNm: bigint;
  widthEndNm: bigint;
  thicknessNm: bigint;
  flags: string;
  flitch: string;
  flitchNumber: number | null;
  costMinor: bigint | null;
  currency: string | null;
  receivedOn: string;
  note: string;
  readings: { takenOn: string; mcTenths: number; meter: string; spot: string }[];
  stock: {
    label: string | null;
    quantity: bigint;
    hold: string;
    ownerJob: { id: number; name: string } | null;
    place: { name: string; label: string; parent: { name: string } | null } | null;
  };
};

/** A piece, ready for the list, the drawing and the judge. Lengths in nanometres. */
export type PieceLine = {
  stockId: number;
  label: OwnLabelCode;
  form: PieceForm;
  species: string;
  lengthNm: Nanometres;
  widthStartNm: Nanometres;
  widthMiddleNm: Nanometres;
  widthEndNm: Nanometres;
  thicknessNm: Nanometres;
  flitch: string;
  flitchNumber: number | null;
  cost: { minor: MinorUnits; currency: CurrencyCode } | null;
  receivedOn: CalendarDate;
  note: string;
  place: string | null;
  placeLabel: OwnLabelCode | null;
  readings: { takenOn: CalendarDate; mcTenths: number; meter: string; spot: string }[];
  facts: PieceFacts;
};

/** The row as a piece line. */
export function pieceLine(row: PieceRow): PieceLine {
  const place = row.stock.place;
  const readings = row.readings.map((each) => ({ ...each, takenOn: each.takenOn as CalendarDate }));
  return {
    stockId: row.stockId,
    label: (row.stock.label ?? '') as OwnLabelCode,
    form: row.form as PieceForm,
    species: row.species,
    lengthNm: nanometres(row.lengthNm),
    widthStartNm: nanometres(row.widthStartNm),
    widthMiddleNm: nanometres(row.widthMiddleNm),
    widthEndNm: nanometres(row.widthEndNm),
    thicknessNm: nanometres(row.thicknessNm),
    flitch: row.flitch,
    flitchNumber: row.flitchNumber,
    cost:
      row.costMinor === null || row.currency === null
        ? null
        : { minor: minorUnits(row.costMinor), currency: row.currency as CurrencyCode },
    receivedOn: row.receivedOn as CalendarDate,
    note: row.note,
    place: place ? (place.parent ? `${place.name}, ${place.parent.name}` : place.name) : null,
    placeLabel: (place?.label ?? null) as OwnLabelCode | null,
    readings,
    facts: {
      inStock: row.stock.quantity > 0n,
      hold: row.stock.hold,
      flags: row.flags
        .split(',')
        .filter((each): each is PieceFlag => (PIECE_FLAGS as readonly string[]).includes(each)),
      readings,
      form: row.form,
      promisedTo: row.stock.ownerJob ?? undefined,
    },
  };
}

/** One piece by its label, or undefined. */
export async function loadPiece(tx: Pick<WriteTransaction, 'piece'>, label: string): Promise<PieceLine | undefined> {
  const row = await tx.piece.findFirst({ where: { stock: { label } }, select: pieceSelect });
  return row ? pieceLine(row) : undefined;
}
