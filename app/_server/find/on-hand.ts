import { containersOnHand } from '@/app/_server/find/containers-on-hand';
import { type Found, findThings } from '@/app/_server/find/find-things';
import { piecesOnHand } from '@/app/_server/find/pieces-on-hand';
import type { WoodFilter } from '@/app/_server/find/wood-filter';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** What On hand shows: which shelf of the book, what is searched for, and where the last page ended. */
export type OnHandAsk = {
  show: 'materials' | 'wood';
  query: string;
  /** Begun anew when it is not given: the last id of the page before. */
  after?: number;
  /** Also what is used up. */
  withEmpty?: boolean;
  /** Of wood: what it is narrowed to. */
  wood?: WoodFilter | undefined;
};

export type OnHandPage = {
  containers: ContainerLine[];
  pieces: PieceLine[];
  places: { label: string; name: string; inside: string | null }[];
  products: { id: number; name: string; maker: string }[];
  jobs: { id: number; name: string; client: string }[];
  /** How many there are in all, counted on the first page only, and no further than 500. */
  total: number | null;
  /** There are more than `total`. */
  more: boolean;
  /** How many of what is searched for the other shelf has, where this one has none; counted, and said, as `total` is. */
  elsewhere: number;
  elsewhereMore: boolean;
  /** The search fits more of this shelf than was looked through, so `total` is a least. */
  cut: boolean;
  /** Give it as `after` for the next page; null on the last. */
  next: number | null;
};

/** As many rows as a phone shows in a few flicks; more are fetched when they are asked for. */
export const PAGE = 20;

/** What a search finds that leads to something on a shelf. */
const LEADS_TO = {
  materials: ['product', 'lot', 'container', 'place'],
  wood: ['piece', 'place'],
} as const;

/** One page of what is on hand, or of what a search finds: containers by product, oldest first; wood by species and form. */
export async function onHand(book: OpenBook, ask: OnHandAsk): Promise<OnHandPage> {
  const found = ask.query.trim() === '' ? undefined : await findThings(book, ask.query, ask);
  const page: OnHandPage = {
    containers: [],
    pieces: [],
    places: [],
    products: [],
    jobs: [],
    elsewhere: 0,
    elsewhereMore: false,
    cut: LEADS_TO[ask.show].some((kind) => found?.cut.has(kind)),
    ...(ask.show === 'materials'
      ? await containersOnHand(book, ask, found, PAGE)
      : await piecesOnHand(book, ask, found, PAGE)),
  };
  if (found && page.total === 0) {
    const other = ask.show === 'materials' ? piecesOnHand : containersOnHand;
    const there = await other(book, ask, found, 1);
    page.elsewhere = there.total ?? 0;
    page.elsewhereMore = there.more;
  }
  if (found && ask.after === undefined) await addOthers(book, found, page);
  return page;
}

/** The first few places, products and jobs that were found by name. */
async function addOthers(book: OpenBook, found: Found, page: OnHandPage): Promise<void> {
  const few = (ids: number[]) => Prisma.join(ids.slice(0, 8));
  const [places, products, jobs] = await Promise.all([
    found.place.length === 0
      ? []
      : book.read.$queryRaw<OnHandPage['places']>`
          SELECT p."label", p."name", up."name" AS "inside" FROM "Place" p LEFT JOIN "Place" up ON up."id" = p."parentId"
          WHERE p."id" IN (${few(found.place)}) ORDER BY p."id"`,
    found.product.length === 0
      ? []
      : book.read.$queryRaw<OnHandPage['products']>`
          SELECT "id", "name", "maker" FROM "Product" WHERE "id" IN (${few(found.product)}) ORDER BY "id"`,
    found.job.length === 0
      ? []
      : book.read.$queryRaw<OnHandPage['jobs']>`
          SELECT "id", "name", "client" FROM "Job" WHERE "id" IN (${few(found.job)}) ORDER BY "id"`,
  ]);
  Object.assign(page, { places, products, jobs });
}
