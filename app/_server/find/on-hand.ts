import { type Found, findThings } from '@/app/_server/find/find-things';
import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';

/** What On hand shows: which shelf of the book, what is searched for, and where the last page ended. */
export type OnHandAsk = {
  show: 'materials' | 'wood';
  query: string;
  /** Begun anew when it is not given: the last id of the page before. */
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
  /** How many there are in all, counted on the first page only. */
  total: number | null;
  /** Give it as `after` for the next page; null on the last. */
  next: number | null;
};

const PAGE = 60;

/** One page of what is on hand, or of what a search finds: containers by product, oldest first; wood by species and form. */
export async function onHand(book: OpenBook, ask: OnHandAsk): Promise<OnHandPage> {
  const found = ask.query.trim() === '' ? undefined : await findThings(book, ask.query);
  const page: OnHandPage = { containers: [], pieces: [], places: [], products: [], jobs: [], total: null, next: null };
  if (ask.show === 'materials') await addContainers(book, ask, found, page);
  else await addPieces(book, ask, found, page);
  if (found && ask.after === undefined) await addOthers(book, found, page);
  return page;
}

const leftOf = (ask: OnHandAsk) => ({ stock: ask.withEmpty ? {} : { quantity: { gt: 0 } } });

async function addContainers(book: OpenBook, ask: OnHandAsk, found: Found | undefined, page: OnHandPage): Promise<void> {
  const wanted = {
    ...leftOf(ask),
    ...(found && {
      OR: [
        { stockId: { in: found.containers } },
        { lotId: { in: found.lot } },
        { productId: { in: found.product } },
        { stock: { placeId: { in: found.place } } },
      ],
    }),
  };
  const [rows, total] = await Promise.all([
    book.read.container.findMany({
      where: { AND: [wanted, ask.after === undefined ? {} : await containersAfter(book, ask.after)] },
      orderBy: [{ product: { name: 'asc' } }, { productId: 'asc' }, { stockId: 'asc' }],
      take: PAGE + 1,
      select: judgeableSelect,
    }),
    ask.after === undefined ? book.read.container.count({ where: wanted }) : null,
  ]);
  page.containers = rows.slice(0, PAGE).map(containerLine);
  page.total = total;
  page.next = rows.length > PAGE ? (page.containers.at(-1)?.stockId ?? null) : null;
}

async function containersAfter(book: OpenBook, stockId: number) {
  const last = await book.read.container.findUnique({
    where: { stockId },
    select: { productId: true, product: { select: { name: true } } },
  });
  if (!last) return { stockId: { gt: stockId } };
  const { productId, product } = last;
  return {
    OR: [
      { product: { name: { gt: product.name } } },
      { product: { name: product.name }, productId: { gt: productId } },
      { productId, stockId: { gt: stockId } },
    ],
  };
}

async function addPieces(book: OpenBook, ask: OnHandAsk, found: Found | undefined, page: OnHandPage): Promise<void> {
  const wanted = {
    ...leftOf(ask),
    ...(found && { OR: [{ stockId: { in: found.piece } }, { stock: { placeId: { in: found.place } } }] }),
  };
  const [rows, total] = await Promise.all([
    book.read.piece.findMany({
      where: { AND: [wanted, ask.after === undefined ? {} : await piecesAfter(book, ask.after)] },
      orderBy: [{ species: 'asc' }, { form: 'asc' }, { stockId: 'asc' }],
      take: PAGE + 1,
      select: pieceSelect,
    }),
    ask.after === undefined ? book.read.piece.count({ where: wanted }) : null,
  ]);
  page.pieces = rows.slice(0, PAGE).map(pieceLine);
  page.total = total;
  page.next = rows.length > PAGE ? (page.pieces.at(-1)?.stockId ?? null) : null;
}

async function piecesAfter(book: OpenBook, stockId: number) {
  const last = await book.read.piece.findUnique({ where: { stockId }, select: { species: true, form: true } });
  if (!last) return { stockId: { gt: stockId } };
  const { species, form } = last;
  return {
    OR: [{ species: { gt: species } }, { species, form: { gt: form } }, { species, form, stockId: { gt: stockId } }],
  };
}

async function addOthers(book: OpenBook, found: Found, page: OnHandPage): Promise<void> {
  const few = (ids: number[]) => ids.slice(0, 8);
  const [places, products, jobs] = await Promise.all([
    book.read.place.findMany({
      where: { id: { in: few(found.place) } },
      select: { label: true, name: true, parent: { select: { name: true } } },
    }),
    book.read.product.findMany({ where: { id: { in: few(found.product) } }, select: { id: true, name: true, maker: true } }),
    book.read.job.findMany({ where: { id: { in: few(found.job) } }, select: { id: true, name: true, client: true } }),
  ]);
  page.places = places.map(({ parent, ...place }) => ({ ...place, inside: parent?.name ?? null }));
  page.products = products;
  page.jobs = jobs;
}
