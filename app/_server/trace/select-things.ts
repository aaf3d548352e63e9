import { EMPTY, KINDS, UNDONE } from '@/app/_server/trace/thing-columns';
import { Prisma } from '@/prisma/generated/client';
import type { TraceKind } from '@/shared/trace/trace-graph';

const HEADS = Object.fromEntries(
  Object.entries(KINDS).map(([kind, { columns, from }]) => {
    const { id, title, ...rest } = columns;
    const others = Object.entries({ ...EMPTY, ...rest }).map(([name, sql]) => `${sql} AS "${name}"`);
    const all = [`'${kind}' AS "kind"`, `${id} AS "id"`, `${title} AS "title"`, ...others].join(', ');
    return [kind, Prisma.raw(`SELECT ${all} FROM ${from} WHERE`)];
  }),
) as Record<TraceKind, Prisma.Sql>;
const IDS = Object.fromEntries(
  Object.entries(KINDS).map(([kind, { columns }]) => [kind, Prisma.raw(columns.id)]),
) as Record<TraceKind, Prisma.Sql>;

/** The things of one kind with these numbers, in columns that are the same for every kind. */
export const selectThings = (kind: TraceKind, ids: readonly number[]): Prisma.Sql =>
  Prisma.sql`${HEADS[kind]} ${IDS[kind]} IN (${Prisma.join([...ids])})`;

const STANDS = Prisma.raw(`NOT ${UNDONE('t."entryId"')}`);

type On = Readonly<Record<string, readonly number[]>>;

/** The faults that stand on any of these jobs, lifts, containers and pieces, in the same columns. */
export const selectFaults = (on: Readonly<Record<'jobId' | 'liftId' | 'stockId', readonly number[]>>): Prisma.Sql =>
  selectOn('fault', on);

/** The samples that were kept of any of these lifts and lots, in the same columns. */
export const selectSamples = (on: Readonly<Record<'liftId' | 'lotAId' | 'lotBId', readonly number[]>>): Prisma.Sql =>
  selectOn('sample', on);

function selectOn(kind: TraceKind, on: On): Prisma.Sql {
  const ways = Object.entries(on).flatMap(([column, ids]) =>
    ids.length > 0 ? [Prisma.sql`${Prisma.raw(`t."${column}"`)} IN (${Prisma.join([...ids])})`] : [],
  );
  return ways.length > 0
    ? Prisma.sql`${HEADS[kind]} (${Prisma.join(ways, ' OR ')}) AND ${STANDS}`
    : Prisma.sql`${HEADS[kind]} 0 = 1`;
}
