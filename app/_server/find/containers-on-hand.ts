import type { Found } from '@/app/_server/find/find-things';
import type { OnHandAsk } from '@/app/_server/find/on-hand';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

type Hits = {
  /** The ids of the containers that what was found leads to. */
  ids: Prisma.Sql;
  /** The same, as conditions on a product and on a container in the walk. */
  ofProduct: Prisma.Sql;
  ofContainer: Prisma.Sql;
};

const IN_ORDER = Prisma.sql`ORDER BY p."name", c."productId", c."stockId"`;
/** From here on the list is walked in its order until the page is full; below, all that was found is put in order. */
const MANY = 1000;

/**
 * A page of containers by product, oldest first, and on the first page how many there are in all. The ids of the page are
 * found before anything else is read of them.
 */
export async function containersOnHand(
  book: OpenBook,
  ask: OnHandAsk,
  found: Found | undefined,
  size: number,
): Promise<{ containers: ContainerLine[]; total: number | null; next: number | null }> {
  const isFirst = ask.after === undefined;
  const hits = found && hitsOf(found);
  if (found && !hits) return { containers: [], total: isFirst ? 0 : null, next: null };
  const left = ask.withEmpty ? Prisma.empty : Prisma.sql`AND s."quantity" > 0`;
  const after = ask.after === undefined ? Prisma.empty : await afterThat(book, ask.after);
  const total = hits || isFirst ? await count(book, hits, left) : MANY;
  const ids = await idsOf(
    book,
    hits,
    !hits || total >= MANY,
    Prisma.sql`${left} ${after} ${IN_ORDER} LIMIT ${size + 1}`,
  );
  if (ids.length === 0) return { containers: [], total: isFirst ? total : null, next: null };
  const page = ids.slice(0, size);
  const containers = await readContainers(book.read, Prisma.sql`c."stockId" IN (${Prisma.join(page)})`, {
    order: IN_ORDER,
    most: size,
  });
  return { containers, total: isFirst ? total : null, next: ids.length > size ? (page.at(-1) ?? null) : null };
}

function hitsOf({ containers, lot, product, place }: Found): Hits | undefined {
  if (containers.length + lot.length + product.length + place.length === 0) return undefined;
  const [labelled, lots, products, places] = [containers, lot, product, place].map(listOf);
  const conditions = [
    [product, Prisma.sql`c."productId" IN (${products})`],
    // The lots of a product that is found itself are left out by product, before their containers are looked at.
    [
      lot,
      Prisma.sql`c."lotId" IN (SELECT "stockId" FROM "Lot" WHERE "stockId" IN (${lots}) AND NOT "productId" IN (${products}))`,
    ],
    [containers, Prisma.sql`c."stockId" IN (${labelled})`],
  ] as const;
  const taken = conditions.flatMap(([ids, condition]) => (ids.length ? [condition] : []));
  // Each way leaves out what the ways before it give, so that nothing has to be sorted to be counted once.
  const ways = taken.map(
    (condition, nr) =>
      Prisma.sql`SELECT c."stockId" AS "id" FROM "Container" c WHERE ${butNot(condition, taken.slice(0, nr))}`,
  );
  const inPlace = Prisma.sql`t."placeId" IN (${places}) AND t."kind" = 'container'`;
  if (place.length && taken.length === 0) ways.push(Prisma.sql`SELECT t."id" FROM "Stock" t WHERE ${inPlace}`);
  else if (place.length) {
    ways.push(Prisma.sql`SELECT t."id" FROM "Stock" t JOIN "Container" c ON c."stockId" = t."id"
      WHERE ${butNot(inPlace, taken)}`);
  }
  const ids = Prisma.join(ways, ' UNION ALL ');
  return {
    ids,
    ofProduct: place.length
      ? Prisma.empty
      : Prisma.sql`AND (p."id" IN (${products}) OR p."id" IN (SELECT "productId" FROM "Lot" WHERE "stockId" IN (${lots}))
          OR p."id" IN (SELECT "productId" FROM "Container" WHERE "stockId" IN (${labelled})))`,
    ofContainer: Prisma.sql`AND (${Prisma.join([...taken, Prisma.sql`s."placeId" IN (${places})`], ' OR ')})`,
  };
}

function butNot(condition: Prisma.Sql, others: readonly Prisma.Sql[]): Prisma.Sql {
  return Prisma.join([condition, ...others.map((other) => Prisma.sql`NOT ${other}`)], ' AND ');
}

/** A list of ids, which none has where it is empty: ids begin at 1. */
function listOf(ids: number[]): Prisma.Sql {
  return ids.length ? Prisma.join(ids) : Prisma.sql`0`;
}

/** The ids of a page. The order of a CROSS JOIN is kept: the walk goes down the products by name and stops when it is full. */
async function idsOf(book: OpenBook, hits: Hits | undefined, isMany: boolean, rest: Prisma.Sql): Promise<number[]> {
  const from = isMany
    ? Prisma.sql`"Product" p CROSS JOIN "Container" c CROSS JOIN "Stock" s
        WHERE c."productId" = p."id" AND s."id" = c."stockId" ${hits?.ofProduct ?? Prisma.empty} ${hits?.ofContainer ?? Prisma.empty}`
    : Prisma.sql`(${hits?.ids ?? Prisma.empty}) hit JOIN "Container" c ON c."stockId" = hit."id"
        JOIN "Stock" s ON s."id" = hit."id" JOIN "Product" p ON p."id" = c."productId" WHERE 0 = 0`;
  const rows = await book.read.$queryRaw<{ id: number }[]>`SELECT c."stockId" AS "id" FROM ${from} ${rest}`;
  return rows.map((row) => row.id);
}

async function count(book: OpenBook, hits: Hits | undefined, left: Prisma.Sql): Promise<number> {
  const [row] = await book.read.$queryRaw<{ total: number | bigint }[]>`
    SELECT COUNT(*) AS "total" FROM ${hits ? Prisma.sql`(${hits.ids}) hit JOIN "Stock" s ON s."id" = hit."id"` : Prisma.sql`"Stock" s`}
    WHERE s."kind" = 'container' ${left}`;
  return Number(row?.total ?? 0);
}

/** Where the next page begins: after a container, in the order of the list. */
async function afterThat(book: OpenBook, stockId: number): Promise<Prisma.Sql> {
  const [last] = await book.read.$queryRaw<{ productId: number; name: string }[]>`
    SELECT c."productId", p."name" FROM "Container" c JOIN "Product" p ON p."id" = c."productId"
    WHERE c."stockId" = ${stockId}`;
  if (!last) return Prisma.sql`AND c."stockId" > ${stockId}`;
  const { name, productId } = last;
  return Prisma.sql`AND p."name" >= ${name} AND (p."name", c."productId", c."stockId") > (${name}, ${productId}, ${stockId})`;
}
