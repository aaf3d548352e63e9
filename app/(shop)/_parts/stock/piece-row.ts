import { newestWettest } from '@/app/_server/fits/conditions-of-piece';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { PieceMark } from '@/app/_ui/piece/piece-mark';
import type { RoughShape } from '@/app/_ui/piece/piece-outline';
import { pieceMarks, sayPiece } from '@/app/(shop)/_parts/stock/say-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { UnitSystem } from '@/shared/units/unit-system';
import { judgePiece, type PieceReason } from '@/shared/wood/judge-piece';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

/** A piece of wood as a list shows it, judged for today. */
export type PieceRow = {
  stockId: number;
  label: string;
  /** "Walnut slab" */
  title: string;
  /** "2,600 mm long, 800 to 850 mm wide, 54 mm thick" */
  size: string;
  onWood: string;
  /** The drawing in words. */
  drawn: string;
  shape: RoughShape;
  /** Its outline and marks as they were measured; null where only three widths are known. */
  measured: { outline: Outline; marks: PieceMarks } | null;
  /** A pack of boards is told in words: it has no outline to draw. */
  isPack: boolean;
  marks: PieceMark[];
  flitch: string | null;
  place: string | null;
  moisture: string;
  usedUp: boolean;
  word: 'use' | 'care' | 'stop';
  because: string | null;
};

export function pieceRow(
  line: PieceLine,
  { today, order, prefer }: { today: CalendarDate; order: DateOrder; prefer: UnitSystem },
): PieceRow {
  const verdict = judgePiece(line.facts, today);
  const said = sayPiece(line, prefer);
  const newest = newestWettest(line);
  return {
    stockId: line.stockId,
    label: line.label,
    ...said,
    measured: line.shape && { outline: line.shape.outline, marks: line.marks },
    isPack: line.form === 'pack',
    marks: pieceMarks(line),
    flitch: line.flitch
      ? `Flitch ${line.flitch}${line.flitchNumber === null ? '' : `, no. ${line.flitchNumber}`}`
      : null,
    place: line.place,
    moisture: newest
      ? `${newest.mcTenths / 10} % on ${sayDate(newest.takenOn, { order, today })}`
      : 'Moisture not read',
    usedUp: !line.facts.inStock,
    word: verdict.word,
    because: sayWorst(verdict.reasons),
  };
}

/** The first reason; of a piece that is promised also the first of what is wrong with it, which whoever it is for needs to know. */
function sayWorst(reasons: readonly PieceReason[]): string | null {
  const [worst, next] = reasons;
  const said = worst?.code === 'promised-elsewhere' ? [worst, next] : [worst];
  return said.flatMap((reason) => (reason ? sayPieceReason(reason).says : [])).join(' ') || null;
}
