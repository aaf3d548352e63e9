import type { PieceLine } from '@/app/_server/stock/load-piece';
import { meterKindOf } from '@/app/(shop)/pieces/meter-kind';
import { readSpot } from '@/app/(shop)/pieces/read-spot';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { MoistureReading } from '@/shared/wood/moisture-reading';
import type { PieceForm } from '@/shared/wood/piece';
import { type ReadingSummary, summariseReadings } from '@/shared/wood/summarise-readings';
import type { ThreeWidths } from '@/shared/wood/three-width-volume';

/** What the computations need of a piece. */
export type FiguredPiece = {
  readonly form: PieceForm;
  /** As the book calls it. */
  readonly wood: string;
  readonly size: ThreeWidths;
  readonly readings: readonly MoistureReading[];
  readonly place: string | null;
  readonly placeLabel: string | null;
};

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
>;

/** A piece line as the computations of wood take it. Meter and spot are read from their words as far as they say anything. */
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
    readings: line.readings.map(({ takenOn, mcTenths, meter, spot }) => ({
      on: takenOn,
      rawTenths: mcTenths,
      meter: meterKindOf(meter),
      ...readSpot(spot, line.lengthNm, prefer),
    })),
    place: line.place,
    placeLabel: line.placeLabel,
  };
}

/** What the newest day of readings says of the piece, with the cautions its size asks for. */
export function newestReadings({ readings, size }: FiguredPiece): ReadingSummary | null {
  return summariseReadings(readings, { length: size.length, thickness: size.thickness });
}
