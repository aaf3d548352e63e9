import { readCut } from '@/app/_server/cuts/kept-cut';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { Laid } from '@/shared/outline/lay-anew';

/** Cuts of cuts of cuts: deeper than any piece is. */
const MOST_DEEP = 20;

/**
 * Where in its log a piece lies, so that sisters can be laid over one another: how far along its own start is, and whether
 * a resaw turned it over. Pieces that were never cut lie where they are; what was measured anew after it was cut has a line
 * of its own, and where that runs in the log is not known: it is left out.
 */
export async function placesInLog(book: OpenBook, lines: readonly PieceLine[]): Promise<ReadonlyMap<number, Laid>> {
  const places = new Map<number, Laid>();
  let open = lines.map(({ stockId }) => ({ own: stockId, at: stockId, laid: { shift: 0, turned: false } as Laid }));
  for (let deep = 0; open.length > 0 && deep < MOST_DEEP; deep += 1) {
    const rows = await book.read.piece.findMany({
      where: { stockId: { in: [...new Set(open.map(({ at }) => at))] } },
      select: {
        stockId: true,
        shape: { select: { source: true } },
        cutFrom: { select: { kind: true, lines: true, pieceId: true } },
      },
    });
    const byId = new Map(rows.map((row) => [row.stockId, row]));
    open = open.flatMap(({ own, at, laid }) => {
      const row = byId.get(at);
      if (!row) return [];
      // Boards out of a pack have no place in a log: the pack is where they begin.
      if (!row.cutFrom || row.cutFrom.kind === 'take') {
        places.set(own, laid);
        return [];
      }
      const part = readCut(row.cutFrom.lines)?.parts.find(({ stockId }) => stockId === at);
      if (!part || row.shape?.source !== 'cut') return [];
      return [{ own, at: row.cutFrom.pieceId, laid: within(laid, part) }];
    });
  }
  return places;
}

/** A piece's place in the piece that its own was cut from. */
function within(laid: Laid, outer: Laid): Laid {
  return { shift: laid.shift + outer.shift, turned: laid.turned !== outer.turned };
}
