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
  /** Of a container: the hold of its lot. */
  lotHold: string | null;
  jobId: number | null;
  pourId: number | null;
  /** Of a fault: the lift and the thing it was found on. */
  liftId: number | null;
  stockId: number | null;
  /** Of a sample: the lots it was mixed of that are not behind its lift already. */
  lotAId: number | null;
  lotBId: number | null;
  nr: number | null;
  /** What the newest look at a sample found. */
  seen: string | null;
  client: string | null;
  contact: string | null;
  purpose: string | null;
  stage: string | null;
};

// In the order of the columns; the casts tell a database that asks what an empty column is of.
export const EMPTY = {
  code: 'CAST(NULL AS TEXT)',
  day: 'CAST(NULL AS TEXT)',
  state: 'CAST(NULL AS TEXT)',
  label: 'CAST(NULL AS TEXT)',
  place: 'CAST(NULL AS TEXT)',
  left: 'CAST(NULL AS BIGINT)',
  unit: 'CAST(NULL AS TEXT)',
  hold: 'CAST(NULL AS TEXT)',
  lotHold: 'CAST(NULL AS TEXT)',
  jobId: 'CAST(NULL AS INTEGER)',
  pourId: 'CAST(NULL AS INTEGER)',
  liftId: 'CAST(NULL AS INTEGER)',
  stockId: 'CAST(NULL AS INTEGER)',
  lotAId: 'CAST(NULL AS INTEGER)',
  lotBId: 'CAST(NULL AS INTEGER)',
  nr: 'CAST(NULL AS INTEGER)',
  seen: 'CAST(NULL AS TEXT)',
  client: 'CAST(NULL AS TEXT)',
  contact: 'CAST(NULL AS TEXT)',
  purpose: 'CAST(NULL AS TEXT)',
  stage: 'CAST(NULL AS TEXT)',
};

type Columns = { id: string; title: string } & Partial<typeof EMPTY>;

/** Whether an entry was reversed. */
export const UNDONE = (entry: string) => `EXISTS (SELECT 1 FROM "Entry" undone WHERE undone."reversesId" = ${entry})`;

/** A lot that was weighed out for the sample's lift leads to it by way of that lift. */
const BESIDE_ITS_LIFT = (lot: string) => `CASE WHEN EXISTS (SELECT 1 FROM "Weighed" w
  JOIN "Container" c ON c."stockId" = w."stockId" WHERE w."liftId" = t."liftId" AND c."lotId" = ${lot}
  AND NOT ${UNDONE('w."entryId"')}) THEN NULL ELSE ${lot} END`;

export const KINDS: Readonly<Record<TraceKind, { columns: Columns; from: string }>> = {
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
      lotHold: 'h."hold"',
    },
    from: `"Container" t JOIN "Product" p ON p."id" = t."productId" JOIN "Lot" o ON o."stockId" = t."lotId"
      JOIN "Stock" h ON h."id" = t."lotId" JOIN "Stock" s ON s."id" = t."stockId" LEFT JOIN "Place" a ON a."id" = s."placeId"`,
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
  sample: {
    columns: {
      id: 't."id"',
      title: 't."name"',
      day: 't."lookOn"',
      state: `CASE WHEN ${UNDONE('t."entryId"')} THEN 'undone'
        WHEN t."goneById" IS NOT NULL AND NOT ${UNDONE('t."goneById"')} THEN 'gone' ELSE 'kept' END`,
      place: 'a."name"',
      liftId: 't."liftId"',
      lotAId: BESIDE_ITS_LIFT('t."lotAId"'),
      lotBId: BESIDE_ITS_LIFT('t."lotBId"'),
      seen: `(SELECT k."result" FROM "SampleLook" k WHERE k."sampleId" = t."id" AND NOT ${UNDONE('k."entryId"')}
        ORDER BY k."id" DESC LIMIT 1)`,
    },
    from: '"Sample" t LEFT JOIN "Place" a ON a."id" = t."placeId"',
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
