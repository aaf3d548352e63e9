import { selectThings, type ThingRow } from '@/app/_server/trace/select-things';
import type { TraceReader } from '@/app/_server/trace/trace-steps';
import type { Way } from '@/app/_server/trace/walk-trace';
import { Prisma } from '@/prisma/generated/client';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';
import type { JobStage } from '@/shared/timeline/job-stage';
import { kindOfKey, type TraceKey, type TraceKind } from '@/shared/trace/trace-graph';
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

export type TraceClient = {
  readonly purpose: string;
  readonly name: string;
  readonly contact: string;
  readonly stage: JobStage;
};

/** What the things of a trace are called, where they are and what is left of them, in the order they were found: one read. */
export async function nameThings(tx: TraceReader, found: ReadonlyMap<TraceKey, Way>): Promise<TraceNode[]> {
  const ids = new Map<TraceKind, number[]>();
  for (const key of found.keys()) {
    const kind = kindOfKey(key);
    const list = ids.get(kind);
    if (list) list.push(idOf(key));
    else ids.set(kind, [idOf(key)]);
  }
  const selects = [...ids].map(([kind, list]) => selectThings(kind, list));
  const rows = await tx.$queryRaw<ThingRow[]>`${Prisma.join(selects, ' UNION ALL ')}`;
  const named = new Map(rows.map((row) => [`${row.kind}:${row.id}`, row]));
  return [...found].flatMap(([key, way]) => {
    const row = named.get(key);
    return row ? [nodeOf(key, way, row)] : [];
  });
}

const idOf = (key: TraceKey) => Number(key.slice(key.indexOf(':') + 1));

function nodeOf(key: TraceKey, way: Way, row: ThingRow): TraceNode {
  const kind = kindOfKey(key);
  const id = idOf(key);
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
