import { unwrap } from '@/shared/result/result';
import { allocate } from '@/shared/units/allocate';
import type { MinorUnits } from '@/shared/units/minor-units';
import type { TalliedBoard } from '@/shared/wood/tally-boards';

/**
 * What each board of a pack cost: the cost of the pack shared out by their faces, length times width to the square
 * micrometre, so that the shares add up to it exactly. It goes by all boards the pack came with, in the order of its
 * tally, so a board costs the same whenever it is taken out. Common practice: all are of one thickness and one price.
 * 100 shared by two boards of which one is three times as wide is 25 and 75.
 */
export function shareAmongBoards(cost: MinorUnits, boards: readonly TalliedBoard[]): readonly MinorUnits[] {
  return unwrap(
    allocate(
      cost,
      boards.map(({ width, length }) => Math.round(width / 1000) * Math.round(length / 1000)),
    ),
  );
}
