import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import type { Explained } from '@/shared/wood/explained';
import { QUARTER_THICKNESSES } from '@/shared/wood/quarter-thickness';
import { surfaceMeasure } from '@/shared/wood/surface-measure';
import { tallyBoards } from '@/shared/wood/tally-boards';
import { threeWidthVolume } from '@/shared/wood/three-width-volume';
import { type SellerDifference, sellerDifference, trueBoardFeet } from '@/shared/wood/true-board-feet';

export type BoardMeasure = {
  readonly squareMetres: Explained<number>;
  readonly cubicMetres: Explained<number>;
  readonly boardFeet: Explained<number>;
  /** By the seller's rule, for boards alone: it was not made for natural edges, sheets and scraps. */
  readonly sellers?: {
    readonly surface: Explained<number>;
    readonly boardFeet: Explained<number>;
    readonly difference: SellerDifference;
  };
};

/** The thickness a board of that rough thickness is commonly sold as: the thickest traded one it still holds, 4/4 at least. */
export function soldAs(piece: FiguredPiece): number {
  const held = QUARTER_THICKNESSES.filter(({ rough }) => rough <= piece.size.thickness).at(-1);
  return Math.max(4, held?.quarters ?? 4);
}

/** Face, volume and board feet of what is there, and for a board what a seller counts, by the width in its middle. */
export function workOutBoardFeet(piece: FiguredPiece, quarters: number): BoardMeasure {
  const volume = threeWidthVolume(piece.size);
  const boardFeet = trueBoardFeet(volume.cubicMetres.value);
  if (piece.form !== 'board') return { ...volume, boardFeet };
  const board = { width: piece.size.middle, length: piece.size.length };
  const tally = tallyBoards([board], quarters).boardFeet;
  return {
    ...volume,
    boardFeet,
    sellers: {
      surface: surfaceMeasure(board.width, board.length),
      boardFeet: tally,
      difference: sellerDifference(tally.value, boardFeet.value),
    },
  };
}
