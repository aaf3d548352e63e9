import type { Found } from '@/app/_server/find/find-things';
import type { OnHandAsk } from '@/app/_server/find/on-hand';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

type Hits = {
  /** The ids of the containers that what was found leads to, of those that are asked for. */
  ids: Prisma.Sql;
  /** The same, as conditions on a product and on a container in the walk. The plus keeps the walk to the order of names. */
  ofProduct: Prisma.Sql;
  ofContainer: Prisma.Sql;
};

const IN_ORDER = Prisma.sql`ORDER BY p."name", p."id", c."stockId"`;
/** Nobody reads on so far to need the exact number: beyond it, counting takes longer than finding. */
export const MOST_COUNTED = 500;
/** More places than this can hold so much that putting it all in order takes too long. */
const FEW_PLACES = 8;

export type ContainersOnHand = {
  containers: ContainerLine[];
  /** How many there are in all, on the first page; `more` than that where it says so. */
  total: number | null;
  more: boolean;
  next: number | null;
};

/**
 * A page of containers by product, oldest first, and on the first page how many there are in all, counted up to 500. The
 * ids of the page are found before anything else is read of them. What a few lots, labels or places hold is put in order
 * and cut; the containers of many products are walked in their order until the page is full.
 */
export async function containersOnHand(
  book: OpenBook,
  ask: OnHandAsk,
  found: Found | undefined,
  size: number,
): Promise<ContainersOnHand> {
  const isFirst = ask.after === undefined;
  const left = ask.withEmpty ? Prisma.empty : Prisma.sql`AND s."quantity" > 0`;
  const hits = found && hitsOf(found, left);
  if (found && !hits) return { containers: [], total: isFirst ? 0 : null, more: false, next: null };
  const after = ask.after === undefined ? Prisma.empty : await afterThat(book, ask.after);
  const isWide = !found || found.product.length > 0 || found.place.length > FEW_PLACES;
  const counted = isWide ? await count(book, hits, left) : undefined;
  const isWalked = counted !== undefined && counted > MOST_COUNTED;
  const rows = await rowsOf(book, isWalked ? undefined : hits, {
    walk: Prisma.sql`${hits?.ofProduct ?? Prisma.empty} ${hits?.ofContainer ?? Prisma.empty} ${left}`,
    rest: Prisma.sql`${after} ${IN_ORDER} LIMIT ${size + 1}`,
  });
  const all = counted ?? Number(rows[0]?.total ?? 0);
  const about = { total: isFirst ? Math.min(all, MOST_COUNTED) : null, more: isFirst && all > MOST_COUNTED };
  const page = rows.slice(0, size).map((row) => row.id);
  if (page.length === 0) return { containers: [], ...about, next: null };
  const containers = await readContainers(book.read, Prisma.sql`c."stockId" IN (${Prisma.join(page)})`, {
    order: IN_ORDER,
    most: size,
  });
  return { containers, ...about, next: rows.length > size ? (page.at(-1) ?? null) : null };
}

function hitsOf({ containers, lot, product, place }: Found, left: Prisma.Sql): Hits | undefined {
  if (containers.length + lot.length + product.length + place.length === 0) return undefined;
  const [labelled, lots, products, places] = [containers, lot, product, place].map(listOf);
  const conditions = [
    [product, Prisma.sql`c."productId" IN (${products})`],
    [lot, product.length ? ofOthers(lots, products) : Prisma.sql`c."lotId" IN (${lots})`],
    [containers, Prisma.sql`c."stockId" IN (${labelled})`],
  ] as const;
  const taken = conditions.flatMap(([ids, condition]) => (ids.length ? [condition] : []));
  // Each way leaves out what the ways before it give, so that nothing has to be sorted to be counted once.
  const ways = taken.map(
    (condition, nr) =>
      Prisma.sql`SELECT c."stockId" AS "id" FROM "Container" c JOIN "Stock" s ON s."id" = c."stockId"
        WHERE ${butNot(condition, taken.slice(0, nr))} ${left}`,
  );
  // Most of what ever stood in a place is used up: its index leaves that out before anything else is looked at.
  const inPlace = Prisma.sql`s."placeId" IN (${places}) AND s."kind" = 'container'`;
  if (place.length && taken.length === 0) ways.push(Prisma.sql`SELECT s."id" FROM "Stock" s WHERE ${inPlace} ${left}`);
  else if (place.length) {
    ways.push(Prisma.sql`SELECT s."id" FROM "Stock" s JOIN "Container" c ON c."stockId" = s."id"
      WHERE ${butNot(inPlace, taken)} ${left}`);
  }
  const ids = Prisma.join(ways, ' UNION ALL ');
  return {
    ids,
    ofProduct: place.length
      ? Prisma.empty
      : Prisma.sql`AND (+p."id" IN (${products}) OR +p."id" IN (SELECT "productId" FROM "Lot" WHERE "stockId" IN (${lots}))
          OR +p."id" IN (SELECT "productId" FROM "Container" WHERE "stockId" IN (${labelled})))`,
    ofContainer: Prisma.sql`AND (${Prisma.join([...taken, Prisma.sql`s."placeId" IN (${places})`], ' OR ')})`,
  };
}

/** The lots of a product that is found itself are left out by product, before their containers are looked at. */
function ofOthers(lots: Prisma.Sql | undefined, products: Prisma.Sql | undefined): Prisma.Sql {
  return Prisma.sql`c."lotId" IN (SELECT "stockId" FROM "Lot" WHERE "stockId" IN (${lots}) AND NOT "productId" IN (${products}))`;
}

function butNot(condition: Prisma.Sql, others: readonly Prisma.Sql[]): Prisma.Sql {
  return Prisma.join([condition, ...others.map((other) => Prisma.sql`NOT ${other}`)], ' AND ');
}

/** A list of ids, which none has where it is empty: ids begin at 1. Written out: each bound by itself takes longer. */
function listOf(ids: number[]): Prisma.Sql {
  return Prisma.raw(ids.length ? ids.map(Number).join(',') : '0');
}

/**
 * The ids of a page; where all hits are put in order, with how many there are. The order of a CROSS JOIN is kept: the
 * walk goes down the products by name and stops when it is full.
 */
async function rowsOf(
  book: OpenBook,
  sorted: Hits | undefined,
  { walk, rest }: { walk: Prisma.Sql; rest: Prisma.Sql },
): Promise<{ id: number; total?: number | bigint }[]> {
  if (!sorted) {
    return book.read.$queryRaw`SELECT c."stockId" AS "id" FROM "Product" p CROSS JOIN "Container" c CROSS JOIN "Stock" s
      WHERE c."productId" = p."id" AND s."id" = c."stockId" ${walk} ${rest}`;
  }
  return book.read.$queryRaw`SELECT c."stockId" AS "id", COUNT(*) OVER () AS "total" FROM (${sorted.ids}) hit
    JOIN "Container" c ON c."stockId" = hit."id" JOIN "Product" p ON p."id" = c."productId" WHERE 0 = 0 ${rest}`;
}

/** How many there are, counted to one more than is said. */
async function count(book: OpenBook, hits: Hits | undefined, left: Prisma.Sql): Promise<number> {
  const all = hits ? hits.ids : Prisma.sql`SELECT s."id" FROM "Stock" s WHERE s."kind" = 'container' ${left}`;
  const [row] = await book.read.$queryRaw<{ total: number | bigint }[]>`
    SELECT COUNT(*) AS "total" FROM (SELECT 1 FROM (${all}) "any" LIMIT ${MOST_COUNTED + 1}) "some"`;
  return Number(row?.total ?? 0);
}

/** Where the next page begins: after a container, in the order of the list. */
async function afterThat(book: OpenBook, stockId: number): Promise<Prisma.Sql> {
  const [last] = await book.read.$queryRaw<{ productId: number; name: string }[]>`
    SELECT c."productId", p."name" FROM "Container" c JOIN "Product" p ON p."id" = c."productId"
    WHERE c."stockId" = ${stockId}`;
  if (!last) return Prisma.sql`AND c."stockId" > ${stockId}`;
  const { name, productId } = last;
  return Prisma.sql`AND p."name" >= ${name} AND (p."name", p."id", c."stockId") > (${name}, ${productId}, ${stockId})`;
}
