import type { TraceReader } from '@/app/_server/trace/trace-steps';
import { Prisma } from '@/prisma/generated/client';

/** The act by which a thing is held, or free, as it is now. */
export type StandingHold = { stockId: number; entryId: number; kind: string; why: string; reference: string };

type Row = StandingHold & { id: number; reversesId: number | null };

/** SQLite takes some 32,000 values in one question. */
const AT_ONCE = 5_000;

/**
 * By which act each of these things is held as it is: the last change of its hold that stands. A change that was reversed
 * counts for nothing, and neither does its reversal, so that a hold whose release was undone is the same hold again. What
 * never changed is left out.
 */
export async function standingHolds(
  tx: TraceReader,
  stockIds: readonly number[],
): Promise<ReadonlyMap<number, StandingHold>> {
  const standing = new Map<number, StandingHold>();
  for (let from = 0; from < stockIds.length; from += AT_ONCE) {
    const some = Prisma.join(stockIds.slice(from, from + AT_ONCE));
    const rows = await tx.$queryRaw<Row[]>`
      SELECT m."id", m."stockId", m."entryId", m."reversesId", e."kind", e."why", e."reference"
      FROM "Movement" m JOIN "Entry" e ON e."id" = m."entryId"
      WHERE m."stockId" IN (${some}) AND m."holdFrom" <> m."holdTo" ORDER BY m."id" DESC`;
    const undone = new Set<number>();
    // The newest first: a reversal is read before what it undoes.
    for (const { id, reversesId, ...hold } of rows) {
      if (undone.has(id)) continue;
      if (reversesId !== null) undone.add(reversesId);
      else if (!standing.has(hold.stockId)) standing.set(hold.stockId, hold);
    }
  }
  return standing;
}
