import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A piece of wood in the shop with its newest moisture reading. */
export type WoodToRead = {
  stockId: number;
  label: string;
  species: string;
  form: string;
  place: string | null;
  placeId: number | null;
  job: { id: number; name: string } | null;
  /** The newest day it was read, and the wettest of that day, tenths of a per cent; null where it never was. */
  lastRead: CalendarDate | null;
  mcTenths: number | null;
};

type Row = {
  stockId: number;
  label: string | null;
  species: string;
  form: string;
  place: string | null;
  placeId: number | null;
  jobId: number | null;
  job: string | null;
  lastRead: string | null;
  mcTenths: number | bigint | null;
};

/**
 * The wood in the shop that may ask for a reading, in one question: sheets are made dry, and are left out. A reading that
 * was struck out does not count, nor does one whose entry was reversed.
 */
export async function woodToRead(book: OpenBook): Promise<WoodToRead[]> {
  const rows = await book.read.$queryRaw<Row[]>`
    WITH stands AS (
      SELECT r."pieceId", r."takenOn", COALESCE(r."correctedTenths", r."mcTenths") AS "mc"
      FROM "Reading" r JOIN "Stock" s ON s."id" = r."pieceId" AND s."quantity" > 0
      WHERE NOT EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = r."entryId")
        AND NOT EXISTS (
          SELECT 1 FROM "Entry" struck
          WHERE struck."stockId" = r."pieceId" AND struck."kind" = 'reading-struck'
            AND struck."reference" = CAST(r."id" AS TEXT)
            AND NOT EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = struck."id"))
    ),
    newest AS (SELECT "pieceId", MAX("takenOn") AS "takenOn" FROM stands GROUP BY "pieceId"),
    wettest AS (
      SELECT n."pieceId", n."takenOn", MAX(st."mc") AS "mc"
      FROM newest n JOIN stands st ON st."pieceId" = n."pieceId" AND st."takenOn" = n."takenOn"
      GROUP BY n."pieceId", n."takenOn"
    )
    SELECT p."stockId", s."label", p."species", p."form", pl."name" AS "place", s."placeId", j."id" AS "jobId",
      j."name" AS "job", w."takenOn" AS "lastRead", w."mc" AS "mcTenths"
    FROM "Piece" p
    JOIN "Stock" s ON s."id" = p."stockId"
    LEFT JOIN "Place" pl ON pl."id" = s."placeId"
    LEFT JOIN "Job" j ON j."id" = s."ownerJobId" AND j."state" = 'open'
    LEFT JOIN wettest w ON w."pieceId" = p."stockId"
    WHERE s."quantity" > 0 AND p."form" <> 'sheet'
    ORDER BY p."stockId"`;
  return rows.map(({ jobId, job, ...row }) => ({
    ...row,
    label: row.label ?? '',
    job: jobId === null || job === null ? null : { id: jobId, name: job },
    lastRead: row.lastRead as CalendarDate | null,
    mcTenths: row.mcTenths === null ? null : Number(row.mcTenths),
  }));
}
