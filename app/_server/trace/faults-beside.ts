import type { TraceReader } from '@/app/_server/trace/trace-steps';
import { Prisma } from '@/prisma/generated/client';
import { type TraceEdge, type TraceKey, type TraceKind, traceKey } from '@/shared/trace/trace-graph';

const MOST = 500;

/** The faults that stand on what a trace found, each at the nearest thing it names: its piece or tin, its lift, its job. */
export async function faultsBeside(tx: TraceReader, found: ReadonlyMap<TraceKey, unknown>): Promise<TraceEdge[]> {
  const ids = (kind: TraceKind) =>
    [...found.keys()].filter((key) => key.startsWith(`${kind}:`)).map((key) => Number(key.slice(kind.length + 1)));
  const ways: Prisma.Sql[] = [];
  const on = (column: string, list: readonly number[]) => {
    if (list.length === 0) return;
    ways.push(Prisma.sql`SELECT f."id", f."jobId", f."liftId", f."stockId" FROM "Fault" f
      WHERE ${Prisma.raw(column)} IN (${Prisma.join([...list])})
        AND NOT EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = f."entryId")`);
  };
  on('f."jobId"', ids('job'));
  on('f."liftId"', ids('lift'));
  on('f."stockId"', [...ids('container'), ...ids('piece')]);
  if (ways.length === 0) return [];
  const rows = await tx.$queryRaw<
    { id: number; jobId: number | null; liftId: number | null; stockId: number | null }[]
  >`${Prisma.join(ways, ' UNION ')} LIMIT ${MOST}`;
  return rows
    .sort((a, b) => a.id - b.id)
    .flatMap(({ id, jobId, liftId, stockId }) => {
      const to = traceKey('fault', id);
      const at = [
        ...(stockId === null ? [] : [traceKey('piece', stockId), traceKey('container', stockId)]),
        ...(liftId === null ? [] : [traceKey('lift', liftId)]),
      ].filter((key) => found.has(key));
      const job = jobId === null ? [] : [traceKey('job', jobId)].filter((key) => found.has(key));
      return (at.length > 0 ? at : job).map((from) => ({ from, to }));
    });
}
