import { findThings } from '@/app/_server/find/find-things';
import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';

/** What On hand shows: which shelf of the book, what is searched for, and where the last page ended. */
export type OnHandAsk = {
  show: 'materials' | 'wood';
  query: string;
  /** Ended when it is not given: the last id of the page before. */
  after?: number;
  /** Also what is used up. */
  withEmpty?: boolean;
};

export type OnHandPage = {
  containers: ContainerLine[];
  pieces: PieceLine[];
  places: { label: string; name: string; inside: string | null }[];
  products: { id: number; name: string; maker: string }[];
  jobs: { id: number; name: string; client: string }[];
  /** Give it as `after` for the next page; null on the last. */
  next: number | null;
};

const PAGE = 60;

/** One page of what is on hand, newest first, or of what a search finds. */
export async function onHand(book: OpenBook, ask: OnHandAsk): Promise<OnHandPage> {
  const searching = ask.query.trim() !== '';
  const found = searching ? await findThings(book, ask.query) : undefined;
  const left = ask.withEmpty ? {} : { quantity: { gt: 0 } };
  const older = ask.after === undefined ? {} : { stockId: { lt: ask.after } };
  const page: OnHandPage = { containers: [], pieces: [], places: [], products: [], jobs: [], next: null };
  if (ask.show === 'materials') {
    const rows = await book.read.container.findMany({
      where: {
        ...older,
        stock: left,
        ...(found && {
          OR: [
            { stockId: { in: found.containers } },
            { lotId: { in: found.lot } },
            { productId: { in: found.product } },
            { stock: { placeId: { in: found.place } } },
          ],
        }),
      },
      orderBy: { stockId: 'desc' },
      take: PAGE + 1,
      select: judgeableSelect,
    });
    page.containers = rows.slice(0, PAGE).map(containerLine);
    page.next = rows.length > PAGE ? (page.containers.at(-1)?.stockId ?? null) : null;
  } else {
    const rows = await book.read.piece.findMany({
      where: {
        ...older,
        stock: left,
        ...(found && { OR: [{ stockId: { in: found.piece } }, { stock: { placeId: { in: found.place } } }] }),
      },
      orderBy: { stockId: 'desc' },
      take: PAGE + 1,
      select: pieceSelect,
    });
    page.pieces = rows.slice(0, PAGE).map(pieceLine);
    page.next = rows.length > PAGE ? (page.pieces.at(-1)?.stockId ?? null) : null;
  }
  if (found && ask.after === undefined) await addOthers(book, found, page);
  return page;
}

async function addOthers(
  book: OpenBook,
  found: Awaited<ReturnType<typeof findThings>>,
  page: OnHandPage,
): Promise<void> {
  const few = (ids: number[]) => ids.slice(0, 8);
  const [places, products, jobs] = await Promise.all([
    book.read.place.findMany({
      where: { id: { in: few(found.place) } },
      select: { label: true, name: true, parent: { select: { name: true } } },
    }),
    book.read.product.findMany({
      where: { id: { in: few(found.product) } },
      select: { id: true, name: true, maker: true },
    }),
    book.read.job.findMany({ where: { id: { in: few(found.job) } }, select: { id: true, name: true, client: true } }),
  ]);
  page.places = places.map(({ parent, ...place }) => ({ ...place, inside: parent?.name ?? null }));
  page.products = products;
  page.jobs = jobs;
}
