import type { Nanometres } from '@/shared/units/nanometres';
import { type BoardTally, type TalliedBoard, tallyBoards } from '@/shared/wood/tally-boards';
import { BOARD_FOOT_M3 } from '@/shared/wood/true-board-feet';

/** Boards of one thickness measured both ways: by the seller's rule, and as what is there. */
export type PackMeasure = {
  readonly tally: BoardTally;
  /** By the rule, of each board, in order; unrounded after its surface measure. */
  readonly boardFeet: readonly number[];
  readonly cubicMetres: number;
  /** From the volume, unrounded. */
  readonly trueBoardFeet: number;
};

/**
 * The tally of boards of one thickness, board by board, and their true volume: length times width times thickness. The
 * rule is that of `tallyBoards`. Two boards of 8/4, 6 in by 8 ft, are 16 board feet both ways.
 */
export function measurePack(boards: readonly TalliedBoard[], thickness: Nanometres, quarters: number): PackMeasure {
  const tally = tallyBoards(boards, quarters);
  const cubicMetres = boards.reduce(
    (sum, { width, length }) => sum + (width / 1e9) * (length / 1e9) * (thickness / 1e9),
    0,
  );
  return {
    tally,
    boardFeet: tally.surface.map((surface) => (surface * Math.max(4, quarters)) / 4),
    cubicMetres,
    trueBoardFeet: cubicMetres / BOARD_FOOT_M3,
  };
}
