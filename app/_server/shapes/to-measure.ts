import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { readChalkLine } from '@/app/_server/shapes/kept-outline';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { ChalkLine } from '@/shared/outline/station';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';
import { nanometres } from '@/shared/units/nanometres';

/** What a piece's stations are now, to be gone on from; and whether it was ever measured. */
export type ToMeasureAnew = { line: PieceLine; chalkLine: ChalkLine; isMeasured: boolean };

export async function toMeasure(book: OpenBook, label: string): Promise<ToMeasureAnew | undefined> {
  const line = await loadPiece(book.read, label);
  if (!line) return undefined;
  if (!line.shape) return { line, chalkLine: byThreeWidths(line), isMeasured: false };
  const kept = await book.read.shape.findUnique({ where: { id: line.shape.id }, select: { chalkLine: true } });
  const chalkLine = kept?.chalkLine ? readChalkLine(kept.chalkLine) : byThreeStations(line.shape.outline);
  return { line, chalkLine, isMeasured: true };
}

/** The three widths it arrived with, half of each to either side of the line. */
function byThreeWidths(line: PieceLine): ChalkLine {
  const outline = outlineOfPiece({ ...line, shape: null });
  return outline.ok ? byThreeStations(outline.value) : { stations: [] };
}

/** Both ends and the middle of an outline that was not measured by stations. */
function byThreeStations(outline: Outline): ChalkLine {
  const { left, right } = boundsOf(outline.ring);
  return {
    stations: [left, Math.round((left + right) / 2), right].map((x) => {
      const runs = woodRunsAt(outline, x);
      const low = Math.round(Math.min(...runs.map(({ from }) => from)));
      const high = Math.round(Math.max(...runs.map(({ to }) => to)));
      return {
        at: nanometres((x - left) * 1000),
        left: nanometres(high * 1000),
        right: nanometres(-low * 1000 + 0),
      };
    }),
  };
}
