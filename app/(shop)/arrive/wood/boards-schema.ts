import { z } from 'zod';
import type { ReceiveTally, ReceiveWood } from '@/app/_server/stock/receive-wood';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readCommon } from '@/app/(shop)/arrive/wood/read-common';
import { typedWood, woodSchema } from '@/app/(shop)/arrive/wood/schema';
import { readTallyLine } from '@/app/(shop)/arrive/wood/tally';
import { BOARD_FOOT_M3 } from '@/shared/wood/true-board-feet';

const MM3_PER_M3 = 1e9;
const MOST_BOARD_FEET = 100_000;

/** Reads tallied boards where they are written. A line that does not read is named by its number; the others are read on. */
export function boardsSchema(typing: Typing): z.ZodType<ReceiveTally> {
  return typedWood.transform((typed, context) => {
    const read = readFields(typing, context);
    const common = readCommon(typed, typing, read);
    const { tally } = typed;
    const thicknessNm =
      typed.thickness.trim() === ''
        ? read.say('thickness', 'How thick are they? 8/4 will do.')
        : read.length('thickness', typed.thickness, 'thickness');
    const lines = tally.lines.map((line) => readTallyLine(line, typing.prefer));
    const wrong = lines.flatMap((line, nr) => (line.ok ? [] : [nr + 1]));
    if (lines.length === 0) read.say('tally', 'Tally the boards first: width, then length.');
    if (wrong.length) read.say('tally', `${sayLines(wrong)} not read. Put right what is marked, or remove it.`);
    if (tally.width.trim() || tally.length.trim()) {
      read.say('tally', 'One board is half typed. Add it to the tally, or clear it.');
    }
    const sellerVolumeMm3 = sellerVolume(tally.sellerBoardFeet);
    if (sellerVolumeMm3 === null) read.say('sellerBoardFeet', 'Give a number of board feet, for example 212.');
    if (!common || thicknessNm === undefined || sellerVolumeMm3 === null) return z.NEVER;
    const boards = lines.flatMap((line) =>
      line.ok ? [{ widthNm: Number(line.board.width), lengthNm: Number(line.board.length) }] : [],
    );
    const ofPack = tally.as === 'pack' ? { sellerName: tally.sellerName, sellerVolumeMm3 } : {};
    return { ...common, ...ofPack, as: tally.as, boards, thicknessNm };
  });
}

/** Reads whatever comes in by the form it has: boards of a pack are tallied, all else has one size. */
export function woodArrivalSchema(typing: Typing): z.ZodType<ReceiveWood> {
  const tallied = boardsSchema(typing);
  const ofOneSize = woodSchema(typing);
  return z.unknown().transform((typed, context) => {
    const isTally = typeof typed === 'object' && typed !== null && 'form' in typed && typed.form === 'pack';
    const result = isTally ? tallied.safeParse(typed) : ofOneSize.safeParse(typed);
    if (result.success) return result.data;
    for (const { path, message } of result.error.issues) context.addIssue({ code: 'custom', path: [...path], message });
    return z.NEVER;
  });
}

/** Board feet as typed, as the book keeps a volume; undefined where none is said, null where it does not read. */
function sellerVolume(text: string): number | undefined | null {
  if (text.trim() === '') return undefined;
  const feet = Number(text.trim().replace(',', '.'));
  if (!(feet > 0 && feet <= MOST_BOARD_FEET)) return null;
  return Math.round(feet * BOARD_FOOT_M3 * MM3_PER_M3);
}

function sayLines(numbers: readonly number[]): string {
  const few = numbers.slice(0, 4).join(', ');
  const more = numbers.length > 4 ? ` and ${numbers.length - 4} more` : '';
  return numbers.length === 1 ? `Line ${few} is` : `Lines ${few}${more} are`;
}
