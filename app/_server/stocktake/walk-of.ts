import { instantOf } from '@/app/_server/ledger/instant-of';
import { placeAndBelow } from '@/app/_server/places/place-and-below';
import type { StocktakeHead } from '@/app/_server/stocktake/load-stocktake';
import { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import { choicesOf, type WalkChoice } from '@/shared/stocktake/choices-of';
import { compareWalk, type WalkStatus } from '@/shared/stocktake/compare-walk';
import type { StockUnit } from '@/shared/units/stock-unit';

/** One thing of a walk: what the book has of it, what was seen, and what can be done about it. */
export type WalkThing = {
  stockId: number;
  label: string;
  kind: 'container' | 'piece';
  name: string;
  unit: StockUnit;
  quantity: number;
  size: number;
  tareMg: number | null;
  densityGramsPerLitre: number | null;
  opened: boolean;
  place: string | null;
  ownerJob: { id: number; name: string } | null;
  /** The entry that last moved it. */
  changedById: number;
  changedAt: number;
  changedBy: string;
  seen: { at: number; by: string; counted: number | null; grossMg: number | null } | null;
  status: WalkStatus;
  delta: number;
  choices: readonly WalkChoice[];
};

/** A code that was read on the walk and means no thing of this book. */
type KeptCode = { lineId: number; code: string; at: number; by: string };

export type Walked = { things: WalkThing[]; codes: KeptCode[] };

type Reader = Pick<WriteTransaction, 'place' | 'stocktakeLine' | '$queryRaw'>;

type Row = {
  stockId: number;
  label: string | null;
  kind: string;
  quantity: number | bigint;
  placeId: number | null;
  opened: string | null;
  place: string | null;
  jobId: number | null;
  job: string | null;
  product: string | null;
  unit: string | null;
  density: number | null;
  tareMg: number | bigint | null;
  size: number | bigint | null;
  species: string | null;
  form: string | null;
  changedById: number | null;
  changedBy: string | null;
  changedAt: unknown;
};

/** Everything a walk has to say: what stands there by the book and what was seen, in one question to the database each. */
export async function walkOf(
  tx: Reader,
  { id, placeId, begunAt }: Pick<StocktakeHead, 'id' | 'placeId' | 'begunAt'>,
): Promise<Walked> {
  const places = await placeAndBelow(tx, placeId);
  const [rows, lines] = await Promise.all([
    tx.$queryRaw<Row[]>`
      SELECT s."id" AS "stockId", s."label", s."kind", s."quantity", s."placeId", s."opened", pl."name" AS "place",
        j."id" AS "jobId", j."name" AS "job", p."name" AS "product", p."unit", p."densityGramsPerLitre" AS "density",
        COALESCE(c."tareMg", p."tareMg") AS "tareMg", c."size", w."species", w."form",
        e."id" AS "changedById", e."who" AS "changedBy", e."writtenAt" AS "changedAt"
      FROM "Stock" s
      LEFT JOIN "Container" c ON c."stockId" = s."id"
      LEFT JOIN "Product" p ON p."id" = c."productId"
      LEFT JOIN "Piece" w ON w."stockId" = s."id"
      LEFT JOIN "Place" pl ON pl."id" = s."placeId"
      LEFT JOIN "Job" j ON j."id" = s."ownerJobId"
      LEFT JOIN "Movement" m ON m."id" = s."lastMovementId"
      LEFT JOIN "Entry" e ON e."id" = m."entryId"
      WHERE s."kind" <> 'lot' AND ((s."placeId" IN (${Prisma.join(places)}) AND s."quantity" > 0)
        OR s."id" IN (SELECT "stockId" FROM "StocktakeLine" WHERE "stocktakeId" = ${id} AND "stockId" IS NOT NULL))
      ORDER BY s."id"`,
    tx.stocktakeLine.findMany({ where: { stocktakeId: id }, orderBy: { seenAt: 'desc' } }),
  ]);
  const seen = new Map(lines.flatMap((line) => (line.stockId === null ? [] : [[line.stockId, line] as const])));
  const compared = compareWalk({
    startedAt: begunAt.getTime(),
    places: new Set(places),
    things: rows.map((row) => ({
      stockId: row.stockId,
      kind: row.kind === 'piece' ? 'piece' : 'container',
      quantity: Number(row.quantity),
      placeId: row.placeId,
      changedAt: instantOf(row.changedAt),
    })),
    seen: [...seen].map(([stockId, line]) => ({
      stockId,
      seenAt: line.seenAt.getTime(),
      counted: line.counted === null ? null : Number(line.counted),
    })),
  });
  const said = new Map(compared.map((line) => [line.stockId, line]));
  const things = rows.flatMap((row): WalkThing[] => {
    const line = said.get(row.stockId);
    if (!line) return [];
    const kind = row.kind === 'piece' ? 'piece' : 'container';
    const sighting = seen.get(row.stockId);
    return [
      {
        stockId: row.stockId,
        label: row.label ?? '',
        kind,
        name: row.product ?? `${row.species}, ${row.form}`,
        unit: (row.unit ?? 'piece') as StockUnit,
        quantity: Number(row.quantity),
        size: Number(row.size ?? 1),
        tareMg: row.tareMg === null ? null : Number(row.tareMg),
        densityGramsPerLitre: row.density,
        opened: row.opened !== null,
        place: row.place,
        ownerJob: row.jobId === null || row.job === null ? null : { id: row.jobId, name: row.job },
        changedById: row.changedById ?? 0,
        changedAt: instantOf(row.changedAt),
        changedBy: row.changedBy ?? '',
        seen: sighting
          ? {
              at: sighting.seenAt.getTime(),
              by: sighting.who,
              counted: sighting.counted === null ? null : Number(sighting.counted),
              grossMg: sighting.grossMg === null ? null : Number(sighting.grossMg),
            }
          : null,
        status: line.status,
        delta: line.delta,
        choices: choicesOf({ status: line.status, kind, delta: line.delta }),
      },
    ];
  });
  const codes = lines.flatMap((line) =>
    line.stockId === null ? [{ lineId: line.id, code: line.code, at: line.seenAt.getTime(), by: line.who }] : [],
  );
  return { things, codes };
}
