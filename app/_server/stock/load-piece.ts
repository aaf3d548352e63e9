import { type MarkRow, markSelect, readMarks } from '@/app/_server/shapes/kept-marks';
import { readOutline } from '@/app/_server/shapes/kept-outline';
import { type UsableWidths, widthsOfOutline } from '@/app/_server/shapes/widths-of-outline';
import { standing, struckSelect } from '@/app/_server/stock/struck-readings';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';
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
  origin: true,
  sawn: true,
  sapwoodNm: true,
  cupNm: true,
  bowNm: true,
  twistNm: true,
  quarters: true,
  surfacing: true,
  grain: true,
  faceA: true,
  faceB: true,
  readings: {
    select: {
      id: true,
      takenOn: true,
      mcTenths: true,
      meter: true,
      spot: true,
      meterKind: true,
      depthNm: true,
      alongNm: true,
      acrossNm: true,
      speciesSetting: true,
      woodTenthsC: true,
      correctedTenths: true,
      inheritedFromId: true,
    },
    orderBy: { id: 'desc' },
  },
  shape: { select: { id: true, entryId: true, source: true, outline: true, photoErrorUm: true } },
  marks: { where: { removedById: null }, select: { ...markSelect, entryId: true }, orderBy: { id: 'asc' } },
  pairedWith: { select: { stockId: true, stock: { select: { label: true, quantity: true } } } },
  boards: {
    select: {
      id: true,
      lengthNm: true,
      widthNm: true,
      takenBy: { select: { id: true, reversedBy: { select: { id: true } } } },
    },
    orderBy: { id: 'asc' },
  },
  stock: {
    select: {
      label: true,
      quantity: true,
      hold: true,
      ...struckSelect,
      ownerJob: { select: { id: true, name: true } },
      place: { select: { name: true, label: true, parent: { select: { name: true } } } },
    },
  },
} as const;

type ReadingRow = {
  id: number;
  takenOn: string;
  mcTenths: number;
  meter: string;
  spot: string;
  meterKind: string;
  depthNm: bigint | null;
  alongNm: bigint | null;
  acrossNm: bigint | null;
  speciesSetting: string;
  woodTenthsC: number | null;
  correctedTenths: number | null;
  inheritedFromId: number | null;
};

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
  origin: string;
  sawn: string;
  sapwoodNm: bigint | null;
  cupNm: bigint | null;
  bowNm: bigint | null;
  twistNm: bigint | null;
  quarters: number | null;
  surfacing: string;
  grain: string;
  faceA: string;
  faceB: string;
  readings: ReadingRow[];
  shape: { id: number; entryId: number; source: string; outline: string; photoErrorUm: number | null } | null;
  marks: (MarkRow & { entryId: number })[];
  pairedWith: { stockId: number; stock: { label: string | null; quantity: bigint } } | null;
  boards: {
    id: number;
    lengthNm: bigint;
    widthNm: bigint;
    takenBy: { id: number; reversedBy: { id: number } | null } | null;
  }[];
  stock: {
    label: string | null;
    quantity: bigint;
    hold: string;
    entries: { reference: string }[];
    ownerJob: { id: number; name: string } | null;
    place: { name: string; label: string; parent: { name: string } | null } | null;
  };
};

/** One moisture reading. Lengths in nanometres, moisture in tenths of a per cent, temperature in tenths of a degree. */
export type ReadingLine = {
  takenOn: CalendarDate;
  /** As the meter showed it. */
  mcTenths: number;
  meter: string;
  spot: string;
  meterKind: '' | 'pin' | 'pinless';
  depthNm: Nanometres | null;
  alongNm: Nanometres | null;
  acrossNm: Nanometres | null;
  speciesSetting: string;
  woodTenthsC: number | null;
  correctedTenths: number | null;
  /** Taken over from the piece it was cut from. */
  inherited: boolean;
};

/** One board of a pack as it was tallied. It lies in the pack until an entry that stands took it out. */
type PackBoardLine = { id: number; length: Nanometres; width: Nanometres; taken: boolean };

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
  /** Where the tree stood, as the papers say; empty where nothing does. */
  origin: string;
  /** How the rings meet the face; empty where nobody looked. */
  sawn: '' | 'flat' | 'quarter' | 'mixed';
  sapwoodNm: Nanometres | null;
  /** Measured off a straight edge; null where nobody did. */
  cupNm: Nanometres | null;
  bowNm: Nanometres | null;
  twistNm: Nanometres | null;
  /** 8 for 8/4 */
  quarters: number | null;
  surfacing: '' | 'rough' | 'S2S' | 'S4S';
  grain: '' | 'length' | 'width' | 'none';
  faceA: string;
  faceB: string;
  /** Newest first, without those struck out. */
  readings: ReadingLine[];
  /** As measured; null where only its three widths are known. */
  shape: {
    id: number;
    source: 'stations' | 'photo' | 'cut';
    outline: Outline;
    /** How far a photo may be off where it is furthest from the sheet. */
    errorNm: Nanometres | null;
  } | null;
  /** Its narrowest and widest by that outline. */
  usable: UsableWidths | null;
  marks: PieceMarks;
  /** Numbers of the marks made before the measuring that counts: nobody looked yet whether they lie where they should on it. */
  marksOfBefore: readonly number[];
  pairedWith: { stockId: number; label: OwnLabelCode; inStock: boolean } | null;
  /** Of a pack: every board it came with, in the order of its tally. */
  boards: readonly PackBoardLine[];
  facts: PieceFacts;
};

/** The row as a piece line. */
export function pieceLine(row: PieceRow): PieceLine {
  const place = row.stock.place;
  const shape = row.shape && {
    id: row.shape.id,
    source: row.shape.source as 'stations' | 'photo' | 'cut',
    outline: readOutline(row.shape.outline),
    errorNm: row.shape.photoErrorUm === null ? null : nanometres(row.shape.photoErrorUm * 1000),
  };
  const readings = standing(row.readings, row.stock.entries).map(readingLine);
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
    origin: row.origin,
    sawn: row.sawn as PieceLine['sawn'],
    sapwoodNm: lengthOf(row.sapwoodNm),
    cupNm: lengthOf(row.cupNm),
    bowNm: lengthOf(row.bowNm),
    twistNm: lengthOf(row.twistNm),
    quarters: row.quarters,
    surfacing: row.surfacing as PieceLine['surfacing'],
    grain: row.grain as PieceLine['grain'],
    faceA: row.faceA,
    faceB: row.faceB,
    readings,
    shape,
    usable: shape && widthsOfOutline(shape.outline, shape.source),
    marks: readMarks(row.marks),
    marksOfBefore: row.marks.filter(({ entryId }) => row.shape && entryId < row.shape.entryId).map(({ id }) => id),
    pairedWith: row.pairedWith && {
      stockId: row.pairedWith.stockId,
      label: (row.pairedWith.stock.label ?? '') as OwnLabelCode,
      inStock: row.pairedWith.stock.quantity > 0n,
    },
    boards: row.boards.map(({ id, lengthNm, widthNm, takenBy }) => ({
      id,
      length: nanometres(lengthNm),
      width: nanometres(widthNm),
      taken: takenBy !== null && takenBy.reversedBy === null,
    })),
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

/** A reading's row as the pages take it. */
export function readingLine({ id: _, inheritedFromId, ...row }: ReadingRow): ReadingLine {
  return {
    ...row,
    takenOn: row.takenOn as CalendarDate,
    meterKind: row.meterKind as ReadingLine['meterKind'],
    depthNm: lengthOf(row.depthNm),
    alongNm: lengthOf(row.alongNm),
    acrossNm: lengthOf(row.acrossNm),
    inherited: inheritedFromId !== null,
  };
}

const lengthOf = (nm: bigint | null) => (nm === null ? null : nanometres(nm));

/** One piece by its label, or undefined. */
export async function loadPiece(tx: Pick<WriteTransaction, 'piece'>, label: string): Promise<PieceLine | undefined> {
  const row = await tx.piece.findFirst({ where: { stock: { label } }, select: pieceSelect });
  return row ? pieceLine(row) : undefined;
}
