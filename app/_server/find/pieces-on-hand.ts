import { MOST_COUNTED } from '@/app/_server/find/containers-on-hand';
import type { Found } from '@/app/_server/find/find-things';
import type { OnHandAsk } from '@/app/_server/find/on-hand';
import { woodFilter } from '@/app/_server/find/wood-filter';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/**
 * A page of wood by species and form, and on the first page how many pieces there are in all, counted up to 500. The ids of the page are
 * found before anything else is read of them.
 */
export async function piecesOnHand(
  book: OpenBook,
  ask: OnHandAsk,
  found: Found | undefined,
  size: number,
): Promise<{ pieces: PieceLine[]; total: number | null; more: boolean; next: number | null }> {
  const hits = found && hitsOf(found);
  if (found && !hits) return { pieces: [], total: ask.after === undefined ? 0 : null, more: false, next: null };
  const wanted = Prisma.sql`"Piece" w JOIN "Stock" s ON s."id" = w."stockId"
    ${hits ? Prisma.sql`JOIN (${hits}) hit ON hit."id" = w."stockId"` : Prisma.empty}
    WHERE 0 = 0 ${ask.withEmpty ? NEVER_UNDONE : Prisma.sql`AND s."quantity" > 0`}
    ${woodFilter(ask.wood)}`;
  const after = ask.after === undefined ? Prisma.empty : await afterThat(book, ask.after);
  const ids = await book.read.$queryRaw<{ id: number }[]>`
    SELECT w."stockId" AS "id" FROM ${wanted} ${after} ORDER BY w."species", w."form", w."stockId" LIMIT ${size + 1}`;
  const page = ids.slice(0, size).map((row) => row.id);
  const rows = page.length
    ? await book.read.piece.findMany({
        where: { stockId: { in: page } },
        orderBy: [{ species: 'asc' }, { form: 'asc' }, { stockId: 'asc' }],
        select: pieceSelect,
      })
    : [];
  const total = ask.after === undefined ? await totalOf(book, wanted) : null;
  const most = total === null ? null : Math.min(total, MOST_COUNTED);
  return {
    pieces: rows.map(pieceLine),
    total: most,
    more: total !== most,
    next: ids.length > size ? (page.at(-1) ?? null) : null,
  };
}

/** What an undone cut had made never was: it is not among what is used up. */
const NEVER_UNDONE = Prisma.sql`AND (w."cutId" IS NULL
  OR NOT EXISTS (SELECT 1 FROM "Entry" undoing WHERE undoing."reversesId" = w."cutId"))`;

/** The ids of the pieces that what was found leads to; undefined where it leads to none. */
function hitsOf({ piece, place }: Found): Prisma.Sql | undefined {
  const ways = [
    ...(piece.length
      ? [Prisma.sql`SELECT "stockId" AS "id" FROM "Piece" WHERE "stockId" IN (${Prisma.join(piece)})`]
      : []),
    ...(place.length
      ? [Prisma.sql`SELECT "id" FROM "Stock" WHERE "placeId" IN (${Prisma.join(place)}) AND "kind" = 'piece'`]
      : []),
  ];
  return ways.length ? Prisma.join(ways, ' UNION ') : undefined;
}

async function totalOf(book: OpenBook, wanted: Prisma.Sql): Promise<number> {
  const [row] = await book.read.$queryRaw<{ total: number | bigint }[]>`
    SELECT COUNT(*) AS "total" FROM (SELECT 1 FROM ${wanted} LIMIT ${MOST_COUNTED + 1}) "some"`;
  return Number(row?.total ?? 0);
}

/** Where the next page begins: after a piece, in the order of the list. */
async function afterThat(book: OpenBook, stockId: number): Promise<Prisma.Sql> {
  const last = await book.read.piece.findUnique({ where: { stockId }, select: { species: true, form: true } });
  if (!last) return Prisma.sql`AND w."stockId" > ${stockId}`;
  return Prisma.sql`AND (w."species", w."form", w."stockId") > (${last.species}, ${last.form}, ${stockId})`;
}
