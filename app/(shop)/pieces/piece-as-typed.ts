import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { ReliedOn } from '@/shared/wood/needs-reason';

/** What can be put right of a piece, as it is typed. */
export type TypedPiece = Pick<
  TypedWood,
  | 'species'
  | 'length'
  | 'widths'
  | 'width'
  | 'widthStart'
  | 'widthMiddle'
  | 'widthEnd'
  | 'thickness'
  | 'flags'
  | 'flitch'
  | 'flitchNumber'
  | 'note'
  | 'origin'
  | 'sapwood'
  | 'quarters'
  | 'surfacing'
  | 'grain'
  | 'faceA'
  | 'faceB'
>;

/** A piece of the book as its form would have been typed; read back by the form's schema it is the same piece. */
export function pieceAsTyped(line: PieceLine, prefer: UnitSystem): TypedPiece {
  const { widthStartNm, widthMiddleNm, widthEndNm } = line;
  const isStraight = widthStartNm === widthMiddleNm && widthMiddleNm === widthEndNm;
  return {
    species: line.species,
    length: printLengthExact(line.lengthNm, prefer),
    widths: isStraight ? 'one' : 'three',
    width: printLengthExact(widthMiddleNm, prefer),
    widthStart: printLengthExact(widthStartNm, prefer),
    widthMiddle: printLengthExact(widthMiddleNm, prefer),
    widthEnd: printLengthExact(widthEndNm, prefer),
    thickness: printLengthExact(line.thicknessNm, prefer),
    flags: [...line.facts.flags],
    flitch: line.flitch,
    flitchNumber: line.flitchNumber === null ? '' : String(line.flitchNumber),
    note: line.note,
    origin: line.origin,
    sapwood: line.sapwoodNm === null ? '' : printLengthExact(line.sapwoodNm, prefer),
    quarters: line.quarters === null ? '' : String(line.quarters),
    surfacing: line.surfacing,
    grain: line.grain,
    faceA: line.faceA,
    faceB: line.faceB,
  };
}

/** What a job relies on, as it is typed. */
export function reliedOnAsTyped(typed: TypedPiece): ReliedOn<string> {
  const { length, width, widthStart, widthMiddle, widthEnd, thickness, flags } = typed;
  const widths = typed.widths === 'one' ? [width, width, width] : [widthStart, widthMiddle, widthEnd];
  return { measures: [length, ...widths, thickness].map((text) => text.trim()), flags };
}
