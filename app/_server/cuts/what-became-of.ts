import { standingCutOf } from '@/app/_server/cuts/standing-cut-of';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';

/** The cut that used a piece up, in the words of the history, with the pieces it made; undefined where none did. */
export async function whatBecameOf(
  book: OpenBook,
  stockId: number,
): Promise<{ entryId: number; why: string; pieces: PieceLine[] } | undefined> {
  const cut = await standingCutOf(book.read, stockId);
  if (!cut) return undefined;
  const [entry, rows] = await Promise.all([
    book.read.entry.findUniqueOrThrow({ where: { id: cut.entryId }, select: { why: true } }),
    book.read.piece.findMany({ where: { cutId: cut.entryId }, orderBy: { stockId: 'asc' }, select: pieceSelect }),
  ]);
  return { entryId: cut.entryId, why: entry.why, pieces: rows.map(pieceLine) };
}
