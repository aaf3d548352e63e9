import { type PhotoLine, photosOf } from '@/app/_server/stock/container-page';
import { loadPiece, type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';

export type PiecePage = {
  line: PieceLine;
  photos: PhotoLine[];
  flitch: PieceLine[];
  /** The piece it was cut from, where that cut was undone: this one never was. */
  undoneFrom: OwnLabelCode | null;
};

/** Everything about one piece of wood but its history; with the others of its flitch, in sawn order. */
export async function piecePage(book: OpenBook, label: string): Promise<PiecePage | undefined> {
  const line = await loadPiece(book.read, label);
  if (!line) return undefined;
  const [undoneFrom, photos, flitch] = await Promise.all([
    undoneCutOf(book, line.stockId),
    photosOf(book, line.stockId),
    line.flitch
      ? book.read.piece.findMany({
          where: {
            form: line.form,
            species: line.species,
            flitch: line.flitch,
            OR: [{ cutId: null }, { cutFrom: { entry: { reversedBy: null } } }],
          },
          orderBy: [{ flitchNumber: 'asc' }, { stockId: 'asc' }],
          select: pieceSelect,
          take: 60,
        })
      : [],
  ]);
  return { line, photos, flitch: flitch.map(pieceLine), undoneFrom };
}

async function undoneCutOf(book: OpenBook, stockId: number): Promise<OwnLabelCode | null> {
  const cut = await book.read.cut.findFirst({
    where: { made: { some: { stockId } }, entry: { reversedBy: { isNot: null } } },
    select: { parent: { select: { stock: { select: { label: true } } } } },
  });
  return (cut?.parent.stock.label ?? null) as OwnLabelCode | null;
}
