import { CONTAINER_COLUMNS, CONTAINER_TABLES } from '@/app/_server/stock/container-columns';
import { type ContainerLine, containerLine, type JudgeableRow, type PolicyRow } from '@/app/_server/stock/judgeable';
import { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';

/** Whatever can be asked in SQL: the reading connection or a transaction. */
export type SqlReader = Pick<WriteTransaction, '$queryRaw'>;

/** A row of the query below. Names that two tables share carry their table's letter. */
type Row = Omit<JudgeableRow, 'stock' | 'lot' | 'product'> &
  Omit<JudgeableRow['stock'], 'place'> &
  Omit<JudgeableRow['lot'], 'stockId' | 'code' | 'stock' | 'inspections'> &
  Omit<PolicyRow, 'id' | 'openedLifeCount' | 'openedLifeUnit' | 'system'> & {
    lotId: number;
    lotCode: string | null;
    lotHold: string;
    place: string | null;
    placeLabel: string | null;
    placeParent: string | null;
    productId: number;
    productOpenedLifeCount: number | null;
    productOpenedLifeUnit: string | null;
    systemId: number | null;
    system: string | null;
  };

type InspectionRow = JudgeableRow['lot']['inspections'][number] & { lotId: number };

const NOTHING = Prisma.sql`0 = 1`;

/**
 * Containers as list lines, everything the judge needs with them, in two questions to the database: the client's own way
 * asks once for every relation, which at the bench took longer than all else together. In `where` and `order` the
 * tables are c (Container), s (Stock), l (Lot) and p (Product).
 */
export async function readContainers(
  tx: SqlReader,
  where: Prisma.Sql,
  { order = Prisma.empty, most }: { order?: Prisma.Sql; most: number },
): Promise<ContainerLine[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT ${CONTAINER_COLUMNS},
      p."name", p."maker", p."kind", p."unit", p."policyKind", p."statedLifeCount", p."statedLifeUnit",
      p."statedLifeBasis", p."openedLifeCount" AS "productOpenedLifeCount",
      p."openedLifeUnit" AS "productOpenedLifeUnit", p."openedLifeBasis", p."careWindowDays", p."freezingRuins",
      p."storageLeastTenthsC", p."storageMostTenthsC", p."colourShows", p."part", p."systemId", sy."name" AS "system"
    FROM ${CONTAINER_TABLES} LEFT JOIN "ResinSystem" sy ON sy."id" = p."systemId"
    WHERE ${where} ${order} LIMIT ${most}`;
  const inspections = await inspectionRowsOf(tx, [...new Set(rows.map((row) => row.lotId))]);
  return rows.map((row) => containerLine(judgeable(row, inspections.get(row.lotId) ?? [])));
}

async function inspectionRowsOf(tx: SqlReader, lotIds: number[]): Promise<Map<number, InspectionRow[]>> {
  const found = new Map<number, InspectionRow[]>();
  const rows = await tx.$queryRaw<InspectionRow[]>`
    SELECT "id", "entryId", "lotId", "containerId", "pairLotId", "madeOn", "passed", "validUntil", "kind" FROM "Inspection"
    WHERE ${lotIds.length ? Prisma.sql`"lotId" IN (${Prisma.join(lotIds)})` : NOTHING} ORDER BY "id"`;
  for (const row of rows) found.set(row.lotId, [...(found.get(row.lotId) ?? []), row]);
  return found;
}

function judgeable(row: Row, inspections: InspectionRow[]): JudgeableRow {
  const { place, placeLabel, placeParent, system, systemId } = row;
  return {
    ...row,
    stock: {
      ...row,
      place:
        place === null || placeLabel === null
          ? null
          : { name: place, label: placeLabel, parent: placeParent === null ? null : { name: placeParent } },
    },
    lot: { ...row, stockId: row.lotId, code: row.lotCode, stock: { hold: row.lotHold }, inspections },
    product: {
      ...row,
      id: row.productId,
      openedLifeCount: row.productOpenedLifeCount,
      openedLifeUnit: row.productOpenedLifeUnit,
      system: systemId === null || system === null ? null : { id: systemId, name: system },
    },
  };
}
