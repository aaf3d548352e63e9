import type { TraceReader } from '@/app/_server/trace/trace-steps';
import { Prisma } from '@/prisma/generated/client';

/** A thing that one press of a trace put on hold, and that nobody released or held otherwise since. */
export type StillHeld = { entryId: number; stockId: number; why: string; reference: string };

/** Of these things those still on hold by a trace, or all that one entry of a trace still holds. */
export async function stillHeld(
  tx: TraceReader,
  of: { stockIds: readonly number[] } | { entryId: number },
): Promise<StillHeld[]> {
  if ('stockIds' in of && of.stockIds.length === 0) return [];
  const which =
    'entryId' in of
      ? Prisma.sql`m."entryId" = ${of.entryId}`
      : Prisma.sql`m."stockId" IN (${Prisma.join([...of.stockIds])})`;
  return tx.$queryRaw<StillHeld[]>`
    SELECT m."entryId", m."stockId", e."why", e."reference" FROM "Movement" m
    JOIN "Entry" e ON e."id" = m."entryId" JOIN "Stock" s ON s."id" = m."stockId"
    WHERE ${which} AND e."kind" = 'trace-held' AND m."holdTo" = 'on-hold' AND s."hold" = 'on-hold'
      AND NOT EXISTS (SELECT 1 FROM "Movement" later WHERE later."stockId" = m."stockId" AND later."id" > m."id"
        AND later."holdFrom" <> later."holdTo")
    ORDER BY m."id"`;
}
