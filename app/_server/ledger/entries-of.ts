import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/**
 * Which entries: those of a thing; of a lot with its containers; of a product with its lots and containers; of a place
 * with whatever came and went; of a job; or all of the book.
 */
export type HistoryOf = { stockId?: number; lotId?: number; productId?: number; placeId?: number; jobId?: number };

/**
 * The numbers of the newest entries, newest first, written before entry `before` where that is given. Each way an entry
 * can belong is asked for no more than `most` of its newest on an index, and so is each thing, so that what is read does
 * not grow with the book.
 */
export async function entriesOf(
  book: OpenBook,
  of: HistoryOf,
  before: number | undefined,
  most: number,
): Promise<number[]> {
  const newest = (from: Prisma.Sql, id: 'id' | 'entryId', where: Prisma.Sql) => {
    const column = Prisma.raw(`"${id}"`);
    const older = before === undefined ? Prisma.empty : Prisma.sql`AND ${column} < ${before}`;
    return Prisma.sql`SELECT * FROM (SELECT DISTINCT ${column} AS "id" FROM ${from} WHERE ${where} ${older}
      ORDER BY ${column} DESC LIMIT ${most}) newest`;
  };
  const written = (where: Prisma.Sql) => newest(Prisma.sql`"Entry"`, 'id', where);
  const moved = (where: Prisma.Sql) => newest(Prisma.sql`"Movement"`, 'entryId', where);

  const { productId, placeId, jobId } = of;
  const ways: Prisma.Sql[] = [];
  if (productId !== undefined) ways.push(written(Prisma.sql`"productId" = ${productId}`));
  if (jobId !== undefined) ways.push(written(Prisma.sql`"jobId" = ${jobId}`));
  if (placeId !== undefined) {
    const came = Prisma.sql`"placeToId" = ${placeId} AND ("placeFromId" <> ${placeId} OR "placeFromId" IS NULL)`;
    const went = Prisma.sql`"placeFromId" = ${placeId} AND ("placeToId" <> ${placeId} OR "placeToId" IS NULL)`;
    ways.push(written(Prisma.sql`"placeId" = ${placeId}`), moved(came), moved(went));
  }
  if (of.stockId !== undefined)
    ways.push(newest(Prisma.sql`"EntryAlso"`, 'entryId', Prisma.sql`"stockId" = ${of.stockId}`));
  const things = thingsOf(of);
  if (things) {
    // The order of a CROSS JOIN is kept: thing by thing, each asked for its newest.
    const each = (newestOfThing: Prisma.Sql) =>
      Prisma.sql`SELECT e."id" AS "id" FROM (${things}) thing CROSS JOIN "Entry" e WHERE e."id" IN (${newestOfThing})`;
    ways.push(each(written(Prisma.sql`"stockId" = thing."id"`)), each(moved(Prisma.sql`"stockId" = thing."id"`)));
  }
  if (ways.length === 0) ways.push(written(Prisma.sql`0 = 0`));
  const rows = await book.read.$queryRaw<{ id: number }[]>`
    ${Prisma.join(ways, ' UNION ')} ORDER BY "id" DESC LIMIT ${most}`;
  return rows.map((row) => row.id);
}

function thingsOf({ stockId, lotId, productId }: HistoryOf): Prisma.Sql | undefined {
  const ids: Prisma.Sql[] = [];
  if (stockId !== undefined) ids.push(Prisma.sql`SELECT CAST(${stockId} AS INTEGER) AS "id"`);
  if (lotId !== undefined) {
    ids.push(Prisma.sql`SELECT CAST(${lotId} AS INTEGER) AS "id"`);
    ids.push(Prisma.sql`SELECT "stockId" AS "id" FROM "Container" WHERE "lotId" = ${lotId}`);
  }
  if (productId !== undefined) {
    ids.push(Prisma.sql`SELECT "stockId" AS "id" FROM "Lot" WHERE "productId" = ${productId}`);
    ids.push(Prisma.sql`SELECT "stockId" AS "id" FROM "Container" WHERE "productId" = ${productId}`);
  }
  return ids.length ? Prisma.join(ids, ' UNION ALL ') : undefined;
}
