import { readTallyLine, type TallyLine } from '@/app/(shop)/arrive/wood/tally';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import { measurePack } from '@/shared/wood/measure-pack';
import { soldAs } from '@/shared/wood/sold-as';
import { tallyBoards } from '@/shared/wood/tally-boards';

type Sold = { readonly thickness: string; readonly quarters: string; readonly surfacing: string };

/** The running total of a tally: `12 boards, 64 board feet at 8/4, 0.15 m³. 1 line is not read.` */
export function sayTally(lines: readonly TallyLine[], sold: Sold, prefer: UnitSystem): string {
  if (lines.length === 0) return 'No board yet.';
  const boards = lines.flatMap((line) => {
    const read = readTallyLine(line, prefer);
    return read.ok ? [read.board] : [];
  });
  const wrong = lines.length - boards.length;
  const many = `${boards.length} board${boards.length === 1 ? '' : 's'}`;
  const unread = wrong === 0 ? '' : ` ${wrong} line${wrong === 1 ? ' is' : 's are'} not read.`;
  const thickness = parseLength(sold.thickness, { prefer, mode: 'thickness' });
  if (!thickness.ok || thickness.value <= 0) {
    const { surfaceTotal } = tallyBoards(boards, 4);
    return `${many}, ${surfaceTotal} square feet surface measure. Say the thickness for board feet.${unread}`;
  }
  const quarters = Number(sold.quarters) || soldAs(thickness.value, sold.surfacing.startsWith('S'));
  const { tally, cubicMetres } = measurePack(boards, thickness.value, quarters);
  return `${many}, ${tally.boardFeet.value.toLocaleString('en')} board feet at ${quarters}/4, ${cubicMetres.toFixed(3)} m³.${unread}`;
}
