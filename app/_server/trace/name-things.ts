import { selectFaults, selectThings, type ThingRow } from '@/app/_server/trace/select-things';
import type { TraceReader } from '@/app/_server/trace/trace-steps';
import type { Way } from '@/app/_server/trace/walk-trace';
import { Prisma } from '@/prisma/generated/client';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';
import type { JobStage } from '@/shared/timeline/job-stage';
import {
  idOfKey,
  kindOfKey,
  TRACE_KINDS,
  type TraceEdge,
  type TraceKey,
  type TraceKind,
  traceKey,
} from '@/shared/trace/trace-graph';
import type { StockUnit } from '@/shared/units/stock-unit';

/** One thing of a trace, as the book has it now. */
export type TraceNode = {
  readonly key: TraceKey;
  readonly kind: TraceKind;
  readonly id: number;
  readonly way: Way;
  /** The product, the pour, the job, the species and form, or the kind of the fault. */
  readonly title: string;
  /** Its own label, where it has one. */
  readonly label: string | null;
  /** The maker's lot code. */
  readonly code: string | null;
  /** The how-many-eth lift of its pour. */
  readonly nr: number | null;
  /** The day a lift was poured, or a fault was found. */
  readonly day: string | null;
  /** A container: 'sealed' or 'opened'. A piece: 'here', 'cut', 'taken' or 'gone'. A fault: 'open', 'settled' or 'undone'. */
  readonly state: string | null;
  readonly href: string;
  /** The place it stands in. */
  readonly where: string | null;
  /** What is left of a container or a piece. */
  readonly left: { readonly amount: number; readonly unit: StockUnit } | null;
  readonly hold: HoldState | null;
  /** Of a job: who is to be told. */
  readonly client: TraceClient | null;
};

type TraceClient = {
  readonly purpose: string;
  readonly name: string;
  readonly contact: string;
  readonly stage: JobStage;
};

export type Named = {
  nodes: TraceNode[];
  /** From what a fault was found on to the fault. */
  faults: TraceEdge[];
};

/**
 * What the things of a trace are called, where they are and what is left of them, in the order they were found, and the
 * faults that stand on them, `most` things in all: one read.
 */
export async function nameThings(tx: TraceReader, found: ReadonlyMap<TraceKey, Way>, most: number): Promise<Named> {
  const ids: Record<TraceKind, number[]> = { lot: [], container: [], lift: [], job: [], piece: [], fault: [] };
  for (const key of found.keys()) ids[kindOfKey(key)].push(idOfKey(key));
  const selects = TRACE_KINDS.flatMap((kind) => (ids[kind].length > 0 ? [selectThings(kind, ids[kind])] : []));
  const on = { jobId: ids.job, liftId: ids.lift, stockId: [...ids.container, ...ids.piece] };
  const rows = await tx.$queryRaw<ThingRow[]>`${Prisma.join([...selects, selectFaults(on)], ' UNION ALL ')}`;
  const named = new Map(rows.map((row) => [traceKey(row.kind, row.id), row]));
  const all = new Map(found);
  for (const key of [...named.keys()].sort()) if (!all.has(key) && all.size < most) all.set(key, 'beside');
  const nodes = [...all].flatMap(([key, way]) => {
    const row = named.get(key);
    return row ? [nodeOf(key, way, row)] : [];
  });
  return { nodes, faults: rows.flatMap((row) => (row.kind === 'fault' ? edgesOf(row, found) : [])) };
}

/** A fault hangs on the nearest thing it names: its piece or tin and its lift, or else its job. */
function edgesOf({ id, jobId, liftId, stockId }: ThingRow, found: ReadonlyMap<TraceKey, unknown>): TraceEdge[] {
  const key = (kind: TraceKind, of: number | null) => (of === null ? [] : [traceKey(kind, of)]);
  const isThere = (each: TraceKey) => found.has(each);
  const near = [...key('piece', stockId), ...key('container', stockId), ...key('lift', liftId)].filter(isThere);
  const to = traceKey('fault', id);
  return (near.length > 0 ? near : key('job', jobId).filter(isThere)).map((from) => ({ from, to }));
}

function nodeOf(key: TraceKey, way: Way, row: ThingRow): TraceNode {
  const kind = kindOfKey(key);
  const id = idOfKey(key);
  return {
    key,
    kind,
    id,
    way,
    title: row.title,
    label: row.label,
    code: row.code,
    nr: row.nr === null ? null : Number(row.nr),
    day: row.day,
    state: row.state,
    href: hrefOf(kind, id, row),
    where: row.place,
    left: row.left === null ? null : { amount: Number(row.left), unit: row.unit as StockUnit },
    hold: row.hold as HoldState | null,
    client:
      kind === 'job'
        ? {
            purpose: row.purpose ?? '',
            name: row.client ?? '',
            contact: row.contact ?? '',
            stage: row.stage as JobStage,
          }
        : null,
  };
}

function hrefOf(kind: TraceKind, id: number, { label, jobId, pourId, nr }: ThingRow): string {
  if (kind === 'container') return `/containers/${label}`;
  if (kind === 'piece') return `/pieces/${label}`;
  if (kind === 'lot') return `/lots/${id}`;
  if (kind === 'job') return `/jobs/${id}`;
  return kind === 'lift' ? `/jobs/${jobId}/pours/${pourId}/lifts/${nr}` : `/trace/fault/${id}`;
}
