import { type PhotoLine, photosOf } from '@/app/_server/stock/container-page';
import { loadPiece, type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';

export type PiecePage = { line: PieceLine; photos: PhotoLine[]; flitch: PieceLine[] };

/** Everything about one piece of wood but its history; with the others of its flitch, in sawn order. */
export async function piecePage(book: OpenBook, label: string): Promise<PiecePage | undefined> {
  const line = await loadPiece(book.read, label);
  if (!line) return undefined;
  const [photos, flitch] = await Promise.all([
    photosOf(book, line.stockId),
    line.flitch
      ? book.read.piece.findMany({
          where: { form: line.form, species: line.species, flitch: line.flitch },
          orderBy: [{ flitchNumber: 'asc' }, { stockId: 'asc' }],
          select: pieceSelect,
          take: 60,
        })
      : [],
  ]);
  return { line, photos, flitch: flitch.map(pieceLine) };
}
