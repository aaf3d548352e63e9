import type { PieceLine } from '@/app/_server/stock/load-piece';
import { minorUnits } from '@/shared/units/minor-units';
import { printMoney } from '@/shared/units/print-money';
import type { UnitSystem } from '@/shared/units/unit-system';
import { measurePack } from '@/shared/wood/measure-pack';
import { type PackFigures, packFigures, sayBoardFeet } from '@/shared/wood/pack-figures';
import { sayBoardSize } from '@/shared/wood/say-board-size';
import { shareAmongBoards } from '@/shared/wood/share-among-boards';
import { sellerDifference, trueBoardFeet } from '@/shared/wood/true-board-feet';

const NM_PER_MM = 1e6;
const MM3_PER_M3 = 1e9;

/** One board of a pack as its table shows it. */
export type PackRow = {
  id: number;
  nr: number;
  size: string;
  lengthMm: number;
  widthMm: number;
  boardFeet: string;
  cost: string | null;
  taken: boolean;
};

/** A pack ready to be shown: its table, its board feet each with how it was reckoned, and what is left. */
export function packView(line: PieceLine, sellerMm3: number | null, prefer: UnitSystem) {
  const figures = packFigures(line);
  const { cost } = line;
  const shares = cost ? shareAmongBoards(cost.minor, line.boards) : [];
  const rows = line.boards.map(
    ({ id, length, width, taken }, nr): PackRow => ({
      id,
      nr: nr + 1,
      size: sayBoardSize({ width, length }, prefer),
      lengthMm: length / NM_PER_MM,
      widthMm: width / NM_PER_MM,
      boardFeet: sayBoardFeet(figures.boardFeet[nr] ?? 0),
      cost: cost && shares[nr] !== undefined ? printMoney(shares[nr], cost.currency) : null,
      taken,
    }),
  );
  const costLeft = shares.reduce((sum, share, nr) => (line.boards[nr]?.taken ? sum : sum + share), 0);
  return {
    rows,
    left: sayLeft(figures),
    costLeft: cost ? printMoney(minorUnits(costLeft), cost.currency) : null,
    tally: measurePack(line.boards, line.thicknessNm, figures.quarters).tally.boardFeet,
    volume: trueBoardFeet(figures.all.cubicMetres),
    cubicMetres: figures.all.cubicMetres,
    quarters: figures.quarters,
    seller: sellerMm3 === null ? null : saySeller(trueBoardFeet(sellerMm3 / MM3_PER_M3).value, figures),
  };
}

function sayLeft({ all, left }: PackFigures): string {
  const boards = `board${all.count === 1 ? '' : 's'}`;
  if (left.count === 0) return `All ${all.count} ${boards} were taken out.`;
  const feet = sayBoardFeet(left.boardFeet);
  return left.count === all.count
    ? `All ${all.count} ${boards} are in it, ${feet}.`
    : `${left.count} of ${all.count} ${boards} are left, ${feet}.`;
}

/** The seller's figure beside ours: more is paid for than is counted when it is above. */
function saySeller(sellers: number, { all }: PackFigures): string {
  const said = sayBoardFeet(Math.round(sellers * 100) / 100);
  const { boardFeet } = sellerDifference(sellers, all.boardFeet);
  const apart = Math.abs(Math.round(boardFeet * 100) / 100);
  if (apart === 0) return `${said}, the same as the rule.`;
  return `${said}, ${apart.toLocaleString('en')} ${boardFeet > 0 ? 'more' : 'less'} than the rule.`;
}
