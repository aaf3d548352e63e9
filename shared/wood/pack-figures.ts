import type { Nanometres } from '@/shared/units/nanometres';
import { measurePack } from '@/shared/wood/measure-pack';
import { soldAs } from '@/shared/wood/sold-as';
import type { TalliedBoard } from '@/shared/wood/tally-boards';

type PackBoard = TalliedBoard & { readonly taken: boolean };

type Pack = {
  readonly thicknessNm: Nanometres;
  readonly quarters?: number | null;
  readonly surfacing?: string;
  readonly boards?: readonly PackBoard[];
};

/** One side of a pack: all it came with, or what is left. */
type PackPart = {
  readonly count: number;
  /** By the seller's rule. */
  readonly boardFeet: number;
  /** From the volume. */
  readonly trueBoardFeet: number;
  readonly cubicMetres: number;
};

export type PackFigures = {
  /** The quarters of an inch it is counted at. */
  readonly quarters: number;
  /** By the rule, of each board, in the order of the tally. */
  readonly boardFeet: readonly number[];
  readonly all: PackPart;
  readonly left: PackPart;
};

/**
 * A pack as it came and as it is. It is counted at the quarters it was sold as, or at those its thickness is commonly
 * sold as. A board keeps the board feet it has in the tally of the whole pack, so what is left and what was taken always
 * add up to it. Of two boards of 8 board feet one of which was taken, 8 are left.
 */
export function packFigures({ thicknessNm, quarters: said, surfacing = '', boards = [] }: Pack): PackFigures {
  const quarters = said ?? soldAs(thicknessNm, surfacing.startsWith('S'));
  const { boardFeet } = measurePack(boards, thicknessNm, quarters);
  const part = (isOf: (board: PackBoard) => boolean): PackPart => {
    const these = boards.filter(isOf);
    const { cubicMetres, trueBoardFeet } = measurePack(these, thicknessNm, quarters);
    const counted = boardFeet.reduce((sum, feet, nr) => (boards[nr] && isOf(boards[nr]) ? sum + feet : sum), 0);
    return { count: these.length, boardFeet: counted, trueBoardFeet, cubicMetres };
  };
  return { quarters, boardFeet, all: part(() => true), left: part((board) => !board.taken) };
}

/** `34 boards, 210 board feet, 8/4`; of a pack that boards were taken out of `30 of 34 boards, 188 board feet left, 8/4`. */
export function sayPackSize({ all, left, quarters }: PackFigures): string {
  const boards = `board${all.count === 1 ? '' : 's'}`;
  if (left.count === all.count) return `${all.count} ${boards}, ${sayBoardFeet(all.boardFeet)}, ${quarters}/4`;
  return `${left.count} of ${all.count} ${boards}, ${sayBoardFeet(left.boardFeet)} left, ${quarters}/4`;
}

/** `210 board feet`, `1 board foot`; quarters of one as they are: `12.5 board feet`. */
export function sayBoardFeet(feet: number): string {
  return `${feet.toLocaleString('en', { maximumFractionDigits: 2 })} board ${feet === 1 ? 'foot' : 'feet'}`;
}
