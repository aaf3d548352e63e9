import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** The number of the newest entry about each job. */
export async function newestOfJobs(book: OpenBook, jobIds: readonly number[]): Promise<Map<number, number>> {
  if (jobIds.length === 0) return new Map();
  const rows = await book.read.$queryRaw<{ jobId: number; entryId: number | bigint }[]>`
    SELECT "jobId", MAX("id") AS "entryId" FROM "Entry" WHERE "jobId" IN (${Prisma.join([...new Set(jobIds)])}) GROUP BY "jobId"`;
  return new Map(rows.map((row) => [row.jobId, Number(row.entryId)]));
}

/** The number of the newest entry that bears on each container: its own, its lot's, its product's, or what moved it last. */
export async function newestOfContainers(book: OpenBook, stockIds: readonly number[]): Promise<Map<number, number>> {
  if (stockIds.length === 0) return new Map();
  type Row = Record<'stockId', number> & Record<'moved' | 'own' | 'ofLot' | 'ofProduct', number | bigint | null>;
  const rows = await book.read.$queryRaw<Row[]>`
    SELECT c."stockId", m."entryId" AS "moved",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."stockId" = c."stockId") AS "own",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."stockId" = c."lotId") AS "ofLot",
      (SELECT MAX(e."id") FROM "Entry" e WHERE e."productId" = c."productId" AND e."kind" = 'product-changed') AS "ofProduct"
    FROM "Container" c
    JOIN "Stock" s ON s."id" = c."stockId"
    LEFT JOIN "Movement" m ON m."id" = s."lastMovementId"
    WHERE c."stockId" IN (${Prisma.join([...new Set(stockIds)])})`;
  return new Map(
    rows.map(({ stockId, ...entries }) => [stockId, Math.max(...Object.values(entries).map((id) => Number(id ?? 0)))]),
  );
}
