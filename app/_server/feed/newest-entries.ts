import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** The number of the newest entry about each job. */
export async function newestOfJobs(book: OpenBook, jobIds: readonly number[]): Promise<Map<number, number>> {
  if (jobIds.length === 0) return new Map();
  const rows = await book.read.$queryRaw<{ jobId: number; entryId: number | bigint }[]>`
    SELECT "jobId", MAX("id") AS "entryId" FROM "Entry" WHERE "jobId" IN (${Prisma.join([...new Set(jobIds)])}) GROUP BY "jobId"`;
  return new Map(rows.map((row) => [row.jobId, Number(row.entryId)]));
}

/** The number of the newest entry that changed each product: its name, or how long it may be trusted. */
export async function newestOfProducts(book: OpenBook, productIds: readonly number[]): Promise<Map<number, number>> {
  if (productIds.length === 0) return new Map();
  const rows = await book.read.entry.groupBy({
    by: ['productId'],
    where: { productId: { in: [...new Set(productIds)] }, kind: 'product-changed' },
    _max: { id: true },
  });
  return new Map(rows.map(({ productId, _max }) => [productId ?? 0, _max.id ?? 0]));
}

/**
 * The number of the newest entry that bears on each container: its own, its lot's, its product's, what moved it last, or
 * one that is about another thing first and about it or its lot too, as a test of two lots together.
 */
export async function newestOfContainers(book: OpenBook, stockIds: readonly number[]): Promise<Map<number, number>> {
  if (stockIds.length === 0) return new Map();
  type Row = Record<'stockId', number> &
    Record<'moved' | 'own' | 'ofLot' | 'also' | 'alsoLot' | 'ofProduct', number | bigint | null>;
  const rows = await book.read.$queryRaw<Row[]>`
    SELECT c."stockId", m."entryId" AS "moved",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."stockId" = c."stockId") AS "own",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."stockId" = c."lotId") AS "ofLot",
      (SELECT MAX(a."entryId") FROM "EntryAlso" a WHERE a."stockId" = c."stockId") AS "also",
      (SELECT MAX(a."entryId") FROM "EntryAlso" a WHERE a."stockId" = c."lotId") AS "alsoLot",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."productId" = c."productId" AND e."kind" = 'product-changed') AS "ofProduct"
    FROM "Container" c
    JOIN "Stock" s ON s."id" = c."stockId"
    LEFT JOIN "Movement" m ON m."id" = s."lastMovementId"
    WHERE c."stockId" IN (${Prisma.join([...new Set(stockIds)])})`;
  return newestOf(rows);
}

/**
 * The number of the newest entry that bears on each piece: its own, what moved it last, or one that is about it too. It
 * only grows, also where a reading is struck out and an earlier one counts again.
 */
export async function newestOfPieces(book: OpenBook, stockIds: readonly number[]): Promise<Map<number, number>> {
  if (stockIds.length === 0) return new Map();
  const rows = await book.read.$queryRaw<
    (Record<'stockId', number> & Record<'moved' | 'own' | 'also', number | bigint | null>)[]
  >`
    SELECT s."id" AS "stockId", m."entryId" AS "moved",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."stockId" = s."id") AS "own",
      (SELECT MAX(a."entryId") FROM "EntryAlso" a WHERE a."stockId" = s."id") AS "also"
    FROM "Stock" s LEFT JOIN "Movement" m ON m."id" = s."lastMovementId"
    WHERE s."id" IN (${Prisma.join([...new Set(stockIds)])})`;
  return newestOf(rows);
}

type Numbered = { stockId: number } & Record<string, number | bigint | null>;

/** The greatest of the numbers beside each thing. */
function newestOf(rows: readonly Numbered[]): Map<number, number> {
  return new Map(
    rows.map(({ stockId, ...entries }) => [stockId, Math.max(...Object.values(entries).map((id) => Number(id ?? 0)))]),
  );
}

/** The number of the newest entry that took anything from each place. */
export async function newestFromPlaces(book: OpenBook): Promise<Map<number, number>> {
  const rows = await book.read.movement.groupBy({
    by: ['placeFromId'],
    where: { placeFromId: { not: null }, stock: { kind: 'piece' } },
    _max: { entryId: true },
  });
  return new Map(rows.map(({ placeFromId, _max }) => [placeFromId ?? 0, _max.entryId ?? 0]));
}
