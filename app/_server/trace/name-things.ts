import { selectFaults, selectSamples, selectThings } from '@/app/_server/trace/select-things';
import type { ThingRow } from '@/app/_server/trace/thing-columns';
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
  /** The product, the pour, the job, the species and form, the name of the sample, or the kind of the fault. */
  readonly title: string;
  /** Its own label, where it has one. */
  readonly label: string | null;
  /** The maker's lot code. */
  readonly code: string | null;
  /** The how-many-eth lift of its pour. */
  readonly nr: number | null;
  /** The day a lift was poured, a fault was found, or a sample is to be looked at again. */
  readonly day: string | null;
  /** A container: 'sealed' or 'opened'. A piece: 'here', 'cut', 'taken' or 'gone'. A sample: 'kept', 'gone' or 'undone'. A fault: 'open', 'settled' or 'undone'. */
  readonly state: string | null;
  readonly href: string;
  /** The place it stands or lies in. */
  readonly where: string | null;
  /** What is left of a container or a piece. */
  readonly left: { readonly amount: number; readonly unit: StockUnit } | null;
  readonly hold: HoldState | null;
  /** Of a container: how its lot is held. */
  readonly lotHold: HoldState | null;
  /** What the newest look at a sample found. */
  readonly seen: string | null;
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
  /** From what a fault was found on to the fault, and from what a sample was kept of to the sample. */
  hanging: TraceEdge[];
};

/**
 * What the things of a trace are called, where they are and what is left of them, in the order they were found, and the
 * faults that stand on them and the samples that were kept of them, `most` things in all: one read.
 */
export async function nameThings(tx: TraceReader, found: ReadonlyMap<TraceKey, Way>, most: number): Promise<Named> {
  const ids: Record<TraceKind, number[]> = {
    lot: [],
    container: [],
    lift: [],
    sample: [],
    job: [],
    piece: [],
    fault: [],
  };
  for (const key of found.keys()) ids[kindOfKey(key)].push(idOfKey(key));
  const selects = TRACE_KINDS.flatMap((kind) => (ids[kind].length > 0 ? [selectThings(kind, ids[kind])] : []));
  const on = { jobId: ids.job, liftId: ids.lift, stockId: [...ids.container, ...ids.piece] };
  const kept = { liftId: ids.lift, lotAId: ids.lot, lotBId: ids.lot };
  selects.push(selectFaults(on), selectSamples(kept));
  const rows = await tx.$queryRaw<ThingRow[]>`${Prisma.join(selects, ' UNION ALL ')}`;
  const named = new Map(rows.map((row) => [traceKey(row.kind, row.id), row]));
  const hanging = [...named].flatMap(([to, row]) => hangsOn(row, found).map((from) => ({ from, to })));
  const all = new Map(found);
  const added = new Set(hanging.map(({ to }) => to));
  for (const key of [...added].sort()) if (!all.has(key) && all.size < most) all.set(key, 'beside');
  const nodes = [...all].flatMap(([key, way]) => {
    const row = named.get(key);
    return row ? [nodeOf(key, way, row)] : [];
  });
  return { nodes, hanging };
}

type Found = ReadonlyMap<TraceKey, unknown>;

/** What of the trace a fault was found on, or a sample was kept of; nothing for anything else. */
function hangsOn(row: ThingRow, found: Found): TraceKey[] {
  if (row.kind === 'fault') return faultHangsOn(row, found);
  if (row.kind !== 'sample') return [];
  const { liftId, lotAId, lotBId } = row;
  return [...keyOf('lift', liftId), ...keyOf('lot', lotAId), ...keyOf('lot', lotBId)].filter((key) => found.has(key));
}

const keyOf = (kind: TraceKind, id: number | null) => (id === null ? [] : [traceKey(kind, id)]);

/** A fault hangs on the nearest thing it names: its piece or tin and its lift, or else its job. */
function faultHangsOn({ jobId, liftId, stockId }: ThingRow, found: Found): TraceKey[] {
  const isThere = (each: TraceKey) => found.has(each);
  const near = [...keyOf('piece', stockId), ...keyOf('container', stockId), ...keyOf('lift', liftId)].filter(isThere);
  return near.length > 0 ? near : keyOf('job', jobId).filter(isThere);
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
    lotHold: row.lotHold as HoldState | null,
    seen: row.seen,
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
  if (kind === 'sample') return `/samples?one=${id}`;
  return kind === 'lift' ? `/jobs/${jobId}/pours/${pourId}/lifts/${nr}` : `/trace/fault/${id}`;
}
