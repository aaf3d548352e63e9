import { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';

/** Whatever a trace is read through: the reading connection, or a command's own transaction. */
export type TraceReader = Pick<WriteTransaction, '$queryRaw'>;

/** A container that went into a job: by way of a lift, or pulled for the job itself. */
export type Use = { containerId: number; liftId: number | null; jobId: number };
export type Between = { fromId: number; toId: number };

/** No step of a trace reads more rows than this: a lot has some hundred uses, never this many. */
const MOST_ROWS = 10_000;

const stands = (entry: string) =>
  Prisma.raw(`NOT EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = ${entry})`);
const within = (ids: readonly number[]) => Prisma.join([...ids]);

export async function containersOfLots(tx: TraceReader, lotIds: readonly number[]): Promise<Between[]> {
  if (lotIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    SELECT "lotId" AS "fromId", "stockId" AS "toId" FROM "Container" WHERE "lotId" IN (${within(lotIds)})
    ORDER BY "stockId" LIMIT ${MOST_ROWS}`;
}

export async function lotsOfContainers(tx: TraceReader, containerIds: readonly number[]): Promise<Between[]> {
  if (containerIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    SELECT "lotId" AS "fromId", "stockId" AS "toId" FROM "Container" WHERE "stockId" IN (${within(containerIds)})
    ORDER BY "stockId" LIMIT ${MOST_ROWS}`;
}

/** What went from containers into lifts and jobs, by either end; weighings and pulls that stand only. */
export async function usesIn(
  tx: TraceReader,
  by: 'container' | 'lift' | 'job',
  ids: readonly number[],
): Promise<Use[]> {
  if (ids.length === 0) return [];
  const weighedBy = { container: 'w."stockId"', lift: 'w."liftId"', job: 'p."jobId"' }[by];
  const weighed = Prisma.sql`
    SELECT w."stockId" AS "containerId", w."liftId" AS "liftId", p."jobId" AS "jobId"
    FROM "Weighed" w JOIN "Lift" l ON l."id" = w."liftId" JOIN "Pour" p ON p."id" = l."pourId"
    WHERE ${Prisma.raw(weighedBy)} IN (${within(ids)}) AND ${stands('w."entryId"')}`;
  const pulled = Prisma.sql`
    SELECT m."stockId" AS "containerId", CAST(NULL AS INTEGER) AS "liftId", e."jobId" AS "jobId"
    FROM "Movement" m JOIN "Entry" e ON e."id" = m."entryId"
    WHERE ${Prisma.raw(by === 'container' ? 'm."stockId"' : 'e."jobId"')} IN (${within(ids)}) AND e."kind" = 'pulled'
      AND e."jobId" IS NOT NULL AND m."quantityDelta" < 0 AND ${stands('e."id"')}`;
  const rows = await tx.$queryRaw<{ containerId: number; liftId: number | null; jobId: number }[]>`
    ${by === 'lift' ? weighed : Prisma.sql`${weighed} UNION ${pulled}`} LIMIT ${MOST_ROWS}`;
  // One order on every database, so that the same trace is drawn alike.
  return rows
    .map((row) => ({
      containerId: Number(row.containerId),
      liftId: row.liftId === null ? null : Number(row.liftId),
      jobId: Number(row.jobId),
    }))
    .sort((a, b) => a.jobId - b.jobId || (a.liftId ?? 0) - (b.liftId ?? 0) || a.containerId - b.containerId);
}

export async function jobsOfLifts(tx: TraceReader, liftIds: readonly number[]): Promise<Between[]> {
  if (liftIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    SELECT l."id" AS "fromId", p."jobId" AS "toId" FROM "Lift" l JOIN "Pour" p ON p."id" = l."pourId"
    WHERE l."id" IN (${within(liftIds)}) ORDER BY l."id"`;
}

/**
 * A piece stays in the trace of a job that let it go, by a cut, a delivery or being dropped, where resin, finish or glue was
 * used on the job before: it may be in the wood. An undone promise never was one. Which movement undoes which is asked so
 * that it is no way in: nearly all undo nothing.
 */
const LEFT_AFTER_USE = Prisma.sql`m."jobFromId" IS NOT NULL AND (m."jobToId" IS NULL OR m."jobToId" <> m."jobFromId")
  AND COALESCE(m."reversesId", 0) = 0 AND ${stands('m."entryId"')} AND (
    EXISTS (SELECT 1 FROM "Pour" p JOIN "Lift" l ON l."pourId" = p."id" JOIN "Weighed" w ON w."liftId" = l."id"
      WHERE p."jobId" = m."jobFromId" AND w."entryId" < m."entryId" AND ${stands('w."entryId"')})
    OR EXISTS (SELECT 1 FROM "Entry" e WHERE e."jobId" = m."jobFromId" AND e."kind" = 'pulled' AND e."id" < m."entryId"
      AND ${stands('e."id"')}))`;

/** The pieces that are promised to the jobs, were taken for them, or were theirs when something was used on them. */
export async function piecesOfJobs(tx: TraceReader, jobIds: readonly number[]): Promise<Between[]> {
  if (jobIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    SELECT s."ownerJobId" AS "fromId", s."id" AS "toId" FROM "Stock" s
      WHERE s."ownerJobId" IN (${within(jobIds)}) AND s."kind" = 'piece'
    UNION SELECT m."jobFromId", m."stockId" FROM "Movement" m CROSS JOIN "Stock" s
      WHERE s."id" = m."stockId" AND m."jobFromId" IN (${within(jobIds)}) AND s."kind" = 'piece' AND ${LEFT_AFTER_USE}
    ORDER BY "toId" LIMIT ${MOST_ROWS}`;
}

export async function liftsOfPours(tx: TraceReader, pourIds: readonly number[]): Promise<number[]> {
  if (pourIds.length === 0) return [];
  const rows = await tx.$queryRaw<{ id: number }[]>`
    SELECT l."id" FROM "Lift" l WHERE l."pourId" IN (${within(pourIds)}) ORDER BY l."nr"`;
  return rows.map(({ id }) => id);
}

/** The jobs that pieces are promised to, were taken for, or belonged to when something was used on them. */
export async function jobsOfPieces(tx: TraceReader, pieceIds: readonly number[]): Promise<Between[]> {
  if (pieceIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    SELECT s."ownerJobId" AS "fromId", s."id" AS "toId" FROM "Stock" s
      WHERE s."id" IN (${within(pieceIds)}) AND s."kind" = 'piece' AND s."ownerJobId" IS NOT NULL
    UNION SELECT m."jobFromId", m."stockId" FROM "Movement" m CROSS JOIN "Stock" s
      WHERE s."id" = m."stockId" AND m."stockId" IN (${within(pieceIds)}) AND s."kind" = 'piece' AND ${LEFT_AFTER_USE}
    ORDER BY "toId", "fromId" LIMIT ${MOST_ROWS}`;
}

/** What was cut out of the pieces, and out of that, as deep as it goes; cuts that stand only. */
export async function cutFrom(tx: TraceReader, pieceIds: readonly number[]): Promise<Between[]> {
  if (pieceIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    WITH RECURSIVE below("fromId", "toId") AS (
      SELECT c."pieceId", p."stockId" FROM "Cut" c JOIN "Piece" p ON p."cutId" = c."entryId"
      WHERE c."pieceId" IN (${within(pieceIds)}) AND ${stands('c."entryId"')}
      UNION
      SELECT c."pieceId", p."stockId" FROM below b JOIN "Cut" c ON c."pieceId" = b."toId"
        JOIN "Piece" p ON p."cutId" = c."entryId"
      WHERE ${stands('c."entryId"')}
    ) SELECT "fromId", "toId" FROM below ORDER BY "toId" LIMIT ${MOST_ROWS}`;
}

/** What the pieces were cut out of, back to the piece that came in; cuts that stand only. */
export async function cutOutOf(tx: TraceReader, pieceIds: readonly number[]): Promise<Between[]> {
  if (pieceIds.length === 0) return [];
  return tx.$queryRaw<Between[]>`
    WITH RECURSIVE above("fromId", "toId") AS (
      SELECT c."pieceId", p."stockId" FROM "Piece" p JOIN "Cut" c ON c."entryId" = p."cutId"
      WHERE p."stockId" IN (${within(pieceIds)}) AND ${stands('c."entryId"')}
      UNION
      SELECT c."pieceId", p."stockId" FROM above a JOIN "Piece" p ON p."stockId" = a."fromId"
        JOIN "Cut" c ON c."entryId" = p."cutId"
      WHERE ${stands('c."entryId"')}
    ) SELECT "fromId", "toId" FROM above ORDER BY "toId" LIMIT ${MOST_ROWS}`;
}
