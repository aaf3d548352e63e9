import { Prisma } from '@/prisma/generated/client';
import type { TraceKind } from '@/shared/trace/trace-graph';

/** What is read of a thing of a trace; each kind fills what it has. */
export type ThingRow = {
  kind: TraceKind;
  id: number;
  title: string;
  code: string | null;
  day: string | null;
  state: string | null;
  label: string | null;
  place: string | null;
  left: bigint | number | null;
  unit: string | null;
  hold: string | null;
  jobId: number | null;
  pourId: number | null;
  /** Of a fault: the lift and the thing it was found on. */
  liftId: number | null;
  stockId: number | null;
  nr: number | null;
  client: string | null;
  contact: string | null;
  purpose: string | null;
  stage: string | null;
};

// In the order of the columns; the casts tell a database that asks what an empty column is of.
const EMPTY = {
  code: 'CAST(NULL AS TEXT)',
  day: 'CAST(NULL AS TEXT)',
  state: 'CAST(NULL AS TEXT)',
  label: 'CAST(NULL AS TEXT)',
  place: 'CAST(NULL AS TEXT)',
  left: 'CAST(NULL AS BIGINT)',
  unit: 'CAST(NULL AS TEXT)',
  hold: 'CAST(NULL AS TEXT)',
  jobId: 'CAST(NULL AS INTEGER)',
  pourId: 'CAST(NULL AS INTEGER)',
  liftId: 'CAST(NULL AS INTEGER)',
  stockId: 'CAST(NULL AS INTEGER)',
  nr: 'CAST(NULL AS INTEGER)',
  client: 'CAST(NULL AS TEXT)',
  contact: 'CAST(NULL AS TEXT)',
  purpose: 'CAST(NULL AS TEXT)',
  stage: 'CAST(NULL AS TEXT)',
};

type Columns = { id: string; title: string } & Partial<typeof EMPTY>;

const UNDONE = (entry: string) => `EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = ${entry})`;

const KINDS: Readonly<Record<TraceKind, { columns: Columns; from: string }>> = {
  lot: {
    columns: { id: 't."stockId"', title: 'p."name"', code: 't."code"', hold: 's."hold"' },
    from: '"Lot" t JOIN "Product" p ON p."id" = t."productId" JOIN "Stock" s ON s."id" = t."stockId"',
  },
  container: {
    columns: {
      id: 't."stockId"',
      title: 'p."name"',
      code: 'o."code"',
      state: `CASE WHEN s."opened" IS NULL THEN 'sealed' ELSE 'opened' END`,
      label: 's."label"',
      place: 'a."name"',
      left: 's."quantity"',
      unit: 'p."unit"',
      hold: 's."hold"',
    },
    from: `"Container" t JOIN "Product" p ON p."id" = t."productId" JOIN "Lot" o ON o."stockId" = t."lotId"
      JOIN "Stock" s ON s."id" = t."stockId" LEFT JOIN "Place" a ON a."id" = s."placeId"`,
  },
  lift: {
    columns: {
      id: 't."id"',
      title: 'p."name"',
      day: `CASE WHEN ${UNDONE('t."pouredById"')} THEN NULL ELSE t."pouredOn" END`,
      jobId: 'p."jobId"',
      pourId: 'p."id"',
      nr: 't."nr"',
    },
    from: '"Lift" t JOIN "Pour" p ON p."id" = t."pourId"',
  },
  job: {
    columns: {
      id: 't."id"',
      title: 't."name"',
      client: 't."client"',
      contact: 't."contact"',
      purpose: 't."purpose"',
      stage: 't."stage"',
    },
    from: '"Job" t',
  },
  piece: {
    columns: {
      id: 't."stockId"',
      title: `t."species" || ' ' || t."form"`,
      state: `CASE WHEN s."quantity" > 0 THEN 'here'
        WHEN EXISTS (SELECT 1 FROM "Cut" c WHERE c."pieceId" = t."stockId" AND NOT ${UNDONE('c."entryId"')}) THEN 'cut'
        WHEN s."ownerJobId" IS NOT NULL THEN 'taken' ELSE 'gone' END`,
      label: 's."label"',
      place: 'a."name"',
      left: 's."quantity"',
      unit: `'piece'`,
      hold: 's."hold"',
      jobId: 's."ownerJobId"',
    },
    from: `"Piece" t JOIN "Stock" s ON s."id" = t."stockId" LEFT JOIN "Place" a ON a."id" = s."placeId"`,
  },
  fault: {
    columns: {
      id: 't."id"',
      title: 't."kind"',
      day: 't."foundOn"',
      state: `CASE WHEN ${UNDONE('t."entryId"')} THEN 'undone'
        WHEN t."settledById" IS NOT NULL AND NOT ${UNDONE('t."settledById"')} THEN 'settled' ELSE 'open' END`,
      jobId: 't."jobId"',
      liftId: 't."liftId"',
      stockId: 't."stockId"',
    },
    from: '"Fault" t',
  },
};

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

const FAULT_STANDS = Prisma.raw(`NOT ${UNDONE('t."entryId"')}`);

/** The faults that stand on any of these jobs, lifts, containers and pieces, in the same columns. */
export function selectFaults(on: Readonly<Record<'jobId' | 'liftId' | 'stockId', readonly number[]>>): Prisma.Sql {
  const ways = Object.entries(on).flatMap(([column, ids]) =>
    ids.length > 0 ? [Prisma.sql`${Prisma.raw(`t."${column}"`)} IN (${Prisma.join([...ids])})`] : [],
  );
  return ways.length > 0
    ? Prisma.sql`${HEADS.fault} (${Prisma.join(ways, ' OR ')}) AND ${FAULT_STANDS}`
    : Prisma.sql`${HEADS.fault} 0 = 1`;
}
