import type { Nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';
import { surfaceMeasure } from '@/shared/wood/surface-measure';

export type TalliedBoard = { readonly width: Nanometres; readonly length: Nanometres };

export type BoardTally = {
  /** Surface measure of each board, in order. */
  readonly surface: readonly number[];
  readonly surfaceTotal: number;
  readonly boardFeet: Explained<number>;
};

/**
 * Board feet of boards of one thickness by the hardwood rule: each board's surface measure, exact halves up and down in
 * turn beginning with up, added, then times the thickness in inches. Thickness is the nominal one in quarters of an inch
 * (8 for 8/4); below 4/4 counts as 4/4. Never rounds after the surface measure, so 5/4 gives quarters of a board foot.
 * NHLA rules as the American Hardwood Export Council states them. One board 2 in thick, 6 1/4 in by 8 ft, is 8.
 */
export function tallyBoards(boards: readonly TalliedBoard[], quarters: number): BoardTally {
  if (!Number.isInteger(quarters) || quarters < 1) throw new RangeError(`Not quarters of an inch: ${quarters}`);
  let goesUp = true;
  const surface = boards.map(({ width, length }) => {
    const measured = surfaceMeasure(width, length, goesUp ? 'up' : 'down');
    if (measured.exactHalf) goesUp = !goesUp;
    return measured.value;
  });
  const surfaceTotal = surface.reduce((sum, each) => sum + each, 0);
  const counted = Math.max(4, quarters);
  const boardFeet = explained((surfaceTotal * counted) / 4, 'hardwood-board-feet', {
    surfaceTotal,
    thicknessInches: counted / 4,
  });
  return { surface, surfaceTotal, boardFeet };
}
