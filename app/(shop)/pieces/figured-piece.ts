import type { PieceLine, ReadingLine } from '@/app/_server/stock/load-piece';
import { readSpot } from '@/app/(shop)/pieces/read-spot';
import { type Outline, ringsOf } from '@/shared/outline/outline';
import { outlineArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { usableWidths, type WidthAt } from '@/shared/outline/usable-widths';
import { widthAt } from '@/shared/outline/width-at';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';
import { meterKindOf } from '@/shared/wood/meter-words';
import type { MoistureReading } from '@/shared/wood/moisture-reading';
import type { PieceForm } from '@/shared/wood/piece';
import { soldAs } from '@/shared/wood/sold-as';
import { type ReadingSummary, summariseReadings } from '@/shared/wood/summarise-readings';
import type { ThreeWidths } from '@/shared/wood/three-width-volume';

/** What the computations need of a piece. */
export type FiguredPiece = {
  readonly form: PieceForm;
  /** As the book calls it. */
  readonly wood: string;
  readonly size: ThreeWidths;
  /** Quarters of an inch it is counted as: as the book has it, else by its thickness and how it is surfaced. */
  readonly soldAs: number;
  /** What its measured outline says; null where only its three widths are known. */
  readonly measured: MeasuredFigures | null;
  readonly readings: readonly MoistureReading[];
  readonly place: string | null;
  readonly placeLabel: string | null;
  /** Its own label; null where it is not in the book yet. */
  readonly label: string | null;
  readonly sawn: PieceLine['sawn'];
  /** Off a straightedge; null where nobody measured. */
  readonly warp: Readonly<Record<'cup' | 'bow' | 'twist', Nanometres | null>>;
};

type MeasuredFigures = {
  readonly squareMetres: number;
  /** Of the outline, gaps and all. */
  readonly points: number;
  readonly narrowest: PlacedWidth;
  readonly widest: PlacedWidth;
  /** A third of its length in from the narrower end, where the hardwood rule measures a piece that tapers. */
  readonly atThird: PlacedWidth;
};

/** A usable width and how far along the line it is. */
export type PlacedWidth = { readonly width: Nanometres; readonly along: Nanometres };

type Known = Pick<
  PieceLine,
  | 'form'
  | 'species'
  | 'lengthNm'
  | 'widthStartNm'
  | 'widthMiddleNm'
  | 'widthEndNm'
  | 'thicknessNm'
  | 'place'
  | 'placeLabel'
  | 'readings'
> &
  Partial<Pick<PieceLine, 'shape' | 'label' | 'sawn' | 'cupNm' | 'bowNm' | 'twistNm' | 'quarters' | 'surfacing'>>;

/**
 * A piece line as the computations of wood take it. Where the kind of meter or the place was not kept as such, they are
 * read from their words as far as those say anything.
 */
export function figuredPiece(line: Known, prefer: UnitSystem): FiguredPiece {
  return {
    form: line.form,
    wood: line.species,
    size: {
      length: line.lengthNm,
      start: line.widthStartNm,
      middle: line.widthMiddleNm,
      end: line.widthEndNm,
      thickness: line.thicknessNm,
    },
    soldAs: line.quarters ?? soldAs(line.thicknessNm, line.surfacing?.startsWith('S') ?? false),
    measured: line.shape ? measuredFigures(line.shape.outline) : null,
    readings: line.readings.map((reading) => moistureReading(reading, line.lengthNm, prefer)),
    place: line.place,
    placeLabel: line.placeLabel,
    label: line.label ?? null,
    sawn: line.sawn ?? '',
    warp: { cup: line.cupNm ?? null, bow: line.bowNm ?? null, twist: line.twistNm ?? null },
  };
}

function moistureReading(reading: ReadingLine, length: Nanometres, prefer: UnitSystem): MoistureReading {
  const { depthNm, alongNm, acrossNm, correctedTenths, speciesSetting, woodTenthsC } = reading;
  return {
    on: reading.takenOn,
    rawTenths: reading.mcTenths,
    meter: reading.meterKind || meterKindOf(reading.meter),
    ...readSpot(reading.spot, length, prefer),
    ...(alongNm !== null && { along: alongNm }),
    ...(acrossNm !== null && { across: acrossNm }),
    ...(depthNm !== null && { depth: depthNm }),
    ...(correctedTenths !== null && { correctedTenths }),
    ...(speciesSetting && { speciesSetting }),
    ...(woodTenthsC !== null && { woodTemperature: tenthsCelsius(woodTenthsC) }),
  };
}

function measuredFigures(outline: Outline): MeasuredFigures {
  const { left, right } = boundsOf(outline.ring);
  const nm = (um: number) => nanometres(Math.round(um * 1000));
  const placed = ({ width, at }: WidthAt): PlacedWidth => ({ width: nm(width), along: nm(at - left) });
  const at = (x: number) => placed({ width: widthAt(outline, x), at: x });
  const widths = usableWidths(outline);
  const third = (right - left) / 3;
  return {
    squareMetres: outlineArea(outline) / 1e6,
    points: ringsOf(outline).reduce((sum, ring) => sum + ring.length, 0),
    narrowest: widths ? placed(widths.narrowest) : at(left),
    widest: widths ? placed(widths.widest) : at(left),
    atThird: at(widthAt(outline, left) <= widthAt(outline, right) ? left + third : right - third),
  };
}

/** What the newest day of readings says of the piece, with the cautions its size asks for. */
export function newestReadings({ readings, size }: FiguredPiece): ReadingSummary | null {
  return summariseReadings(readings, { length: size.length, thickness: size.thickness });
}
