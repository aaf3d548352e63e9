import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OurFigures } from '@/app/(shop)/pieces/compare-seller';
import { type FiguredPiece, newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import { usableWidths } from '@/shared/outline/usable-widths';
import { nanometres } from '@/shared/units/nanometres';
import { takenAs } from '@/shared/wood/moisture-reading';
import type { SpeciesMeant } from '@/shared/wood/species-meant';

/** What our own measuring says of a piece: its widest width, what it weighs at its reading, how wet it was read. */
export function ourFigures(line: PieceLine, piece: FiguredPiece, { exact }: SpeciesMeant): OurFigures {
  const widest = line.shape && usableWidths(line.shape.outline)?.widest.width;
  const newest = newestReadings(piece);
  // Two woods of one name weigh differently: of an unsettled one nothing is said.
  const [species, other] = exact;
  const weight = newest && species && !other ? workOutWeight(piece, species, 1) : undefined;
  return {
    widest: widest
      ? nanometres(Math.round(widest * 1000))
      : nanometres(Math.max(line.widthStartNm, line.widthMiddleNm, line.widthEndNm)),
    kilograms: weight?.ok ? weight.value.now.value : null,
    mcTenths: newest ? takenAs(newest.wettest) : null,
  };
}
