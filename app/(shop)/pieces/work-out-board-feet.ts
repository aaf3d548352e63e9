import { faceAndVolume } from '@/app/(shop)/pieces/face-and-volume';
import type { FiguredPiece, PlacedWidth } from '@/app/(shop)/pieces/figured-piece';
import type { Nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';
import { surfaceMeasure } from '@/shared/wood/surface-measure';
import { tallyBoards } from '@/shared/wood/tally-boards';
import { type SellerDifference, sellerDifference, trueBoardFeet } from '@/shared/wood/true-board-feet';

export type BoardMeasure = {
  readonly squareMetres: Explained<number>;
  readonly cubicMetres: Explained<number>;
  readonly boardFeet: Explained<number>;
  /**
   * By the seller's rule: for boards, by the width in the middle, and for slabs that were measured, by the width where
   * the rule takes that of a taper. It was not made for sheets and scraps.
   */
  readonly sellers?: {
    readonly width?: Explained<Nanometres>;
    readonly surface: Explained<number>;
    readonly boardFeet: Explained<number>;
    readonly difference: SellerDifference;
  };
};

/** Face, volume and board feet of what is there, and what a seller counts by the rule for boards. */
export function workOutBoardFeet(piece: FiguredPiece, quarters: number): BoardMeasure {
  const volume = faceAndVolume(piece);
  const boardFeet = trueBoardFeet(volume.cubicMetres.value);
  const tapered = piece.form === 'slab' && piece.measured ? widthOfTaper(piece.measured.atThird) : undefined;
  if (piece.form !== 'board' && !tapered) return { ...volume, boardFeet };
  const board = { width: tapered?.value ?? piece.size.middle, length: piece.size.length };
  const tally = tallyBoards([board], quarters).boardFeet;
  return {
    ...volume,
    boardFeet,
    sellers: {
      ...(tapered && { width: tapered }),
      surface: surfaceMeasure(board.width, board.length),
      boardFeet: tally,
      difference: sellerDifference(tally.value, boardFeet.value),
    },
  };
}

const widthOfTaper = ({ width, along }: PlacedWidth) =>
  explained(width, 'tapered-width', { widthMm: width / 1e6, alongMm: along / 1e6 });
