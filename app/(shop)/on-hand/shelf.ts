import type { PageBook } from '@/app/_server/book/book-for-page';
import type { BookHead } from '@/app/_server/book/read-book';
import { type OnHandPage, onHand } from '@/app/_server/find/on-hand';
import { type ContainerRow, containerRow } from '@/app/(shop)/_parts/stock/container-row';
import { type PieceRow, pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import type { Ask } from '@/app/(shop)/on-hand/ask';
import { readFilter } from '@/app/(shop)/on-hand/read-filter';

/** One page of a shelf, ready to be drawn. */
export type Shelf = Omit<OnHandPage, 'containers' | 'pieces'> & { containers: ContainerRow[]; pieces: PieceRow[] };

export async function readShelf(book: PageBook, head: BookHead, ask: Ask, after?: number): Promise<Shelf> {
  const page = await onHand(book, { ...ask, wood: readFilter(ask.wood, head.units), after });
  const context = { today: head.today, order: head.dateOrder, prefer: head.units };
  return {
    ...page,
    containers: page.containers.map((line) => containerRow(line, context)),
    pieces: page.pieces.map((line) => pieceRow(line, context)),
  };
}
