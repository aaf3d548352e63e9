import { standingHolds } from '@/app/_server/trace/standing-holds';
import type { TraceReader } from '@/app/_server/trace/trace-steps';

/** A thing that one press of a trace put on hold, and that nobody released or held otherwise since. */
export type StillHeld = { entryId: number; stockId: number; why: string; reference: string };

/** Of these things those still on hold by a trace, or all that one entry of a trace still holds; in the order of the book. */
export async function stillHeld(
  tx: TraceReader,
  of: { stockIds: readonly number[] } | { entryId: number },
): Promise<StillHeld[]> {
  const ids = 'entryId' in of ? await movedBy(tx, of.entryId) : of.stockIds;
  const holds = await standingHolds(tx, [...new Set(ids)]);
  return [...holds.values()]
    .filter(({ kind, entryId }) => kind === 'trace-held' && (!('entryId' in of) || entryId === of.entryId))
    .map(({ entryId, stockId, why, reference }) => ({ entryId, stockId, why, reference }))
    .sort((a, b) => a.entryId - b.entryId || a.stockId - b.stockId);
}

async function movedBy(tx: TraceReader, entryId: number): Promise<number[]> {
  const rows = await tx.$queryRaw<{ stockId: number }[]>`
    SELECT "stockId" FROM "Movement" WHERE "entryId" = ${entryId} ORDER BY "id"`;
  return rows.map(({ stockId }) => stockId);
}
