import { instantOf } from '@/app/_server/ledger/instant-of';
import { CONTAINER_COLUMNS, CONTAINER_TABLES } from '@/app/_server/stock/container-columns';
import {
  type ContainerLine,
  containerLine,
  INSPECTION_COLUMNS,
  type JudgeableRow,
  policySelect,
} from '@/app/_server/stock/judgeable';
import { SOON_DAYS } from '@/app/_server/watch/watch-list';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A container in the shop, ready for the judge, when it was last moved, milliseconds, and what it cost when full. */
export type InShop = { line: ContainerLine; movedAt: number; cost: { minor: bigint; currency: string } | null };

/** A column of the flat read: SQLite and PostgreSQL differ in what a raw boolean, big integer or instant comes as. */
type Raw = string | number | bigint | boolean | Date | null;
type FlatRow = Record<
  | 'stockId'
  | 'size'
  | 'openedLifeCount'
  | 'openedLifeUnit'
  | 'receivedOn'
  | 'label'
  | 'quantity'
  | 'condition'
  | 'hold'
  | 'opened'
  | 'place'
  | 'placeLabel'
  | 'placeParent'
  | 'lotId'
  | 'lotCode'
  | 'lotHold'
  | 'madeOn'
  | 'madePrecision'
  | 'madeConfirmed'
  | 'bestBefore'
  | 'bestPrecision'
  | 'bestConfirmed'
  | 'useBy'
  | 'usePrecision'
  | 'useConfirmed'
  | 'productId'
  | 'costMinor'
  | 'currency'
  | 'movedAt',
  Raw
>;

/**
 * The containers in the shop that may need somebody: all but those that surely do not, so that a shop of 10,000 is looked
 * through at once. Left out is only what is sealed, free, never inspected, with nothing seen in it, and with a confirmed
 * printed date past every care window and no maker's life beside it that could end sooner. One flat read instead of the
 * usual nested one; plain SQL of both databases, written so that no missing value can leave a container out.
 */
export async function containersToJudge(book: OpenBook, today: CalendarDate): Promise<InShop[]> {
  const products = await book.read.product.findMany({ select: policySelect });
  const widest = products.reduce((most, { careWindowDays }) => Math.max(most, careWindowDays), SOON_DAYS);
  const horizon = addDays(today, widest);
  const [rows, inspections] = await Promise.all([
    book.read.$queryRaw<FlatRow[]>`
      SELECT ${CONTAINER_COLUMNS}, c."costMinor", c."currency", e."happenedAt" AS "movedAt"
      FROM ${CONTAINER_TABLES}
      LEFT JOIN "Movement" m ON m."id" = s."lastMovementId"
      LEFT JOIN "Entry" e ON e."id" = m."entryId"
      WHERE s."quantity" > 0 AND (
        s."hold" <> 'free' OR ls."hold" <> 'free' OR s."condition" <> '' OR s."opened" IS NOT NULL
        OR (l."bestBefore" IS NULL AND l."useBy" IS NULL)
        OR (l."bestBefore" IS NOT NULL AND (l."bestBefore" <= ${horizon} OR NOT l."bestConfirmed"))
        OR (l."useBy" IS NOT NULL AND (l."useBy" <= ${horizon} OR NOT l."useConfirmed"))
        OR (l."madeOn" IS NOT NULL AND (l."madeOn" > ${today}
          OR (p."statedLifeCount" IS NOT NULL AND p."statedLifeBasis" <> 'house-default')))
        OR EXISTS (SELECT 1 FROM "Inspection" i WHERE i."lotId" = c."lotId")
      )
      ORDER BY c."stockId"`,
    book.read.inspection.findMany({
      select: { ...INSPECTION_COLUMNS, lotId: true },
    }),
  ]);
  const policies = new Map(products.map((product) => [product.id, product]));
  const inspected = new Map<number, JudgeableRow['lot']['inspections']>();
  for (const { lotId, ...each } of inspections) inspected.set(lotId, [...(inspected.get(lotId) ?? []), each]);
  return rows.flatMap((row) => {
    const product = policies.get(Number(row.productId));
    if (!product) return [];
    const line = containerLine({
      stockId: Number(row.stockId),
      size: BigInt(Number(row.size)),
      tareMg: null,
      openedLifeCount: row.openedLifeCount === null ? null : Number(row.openedLifeCount),
      openedLifeUnit: text(row.openedLifeUnit),
      receivedOn: String(row.receivedOn),
      stock: {
        label: text(row.label),
        quantity: BigInt(Number(row.quantity)),
        condition: String(row.condition),
        hold: String(row.hold),
        opened: text(row.opened),
        placeId: null,
        place:
          row.place === null
            ? null
            : {
                name: String(row.place),
                label: String(row.placeLabel),
                parent: row.placeParent === null ? null : { name: String(row.placeParent) },
              },
      },
      lot: {
        stockId: Number(row.lotId),
        code: text(row.lotCode),
        madeOn: text(row.madeOn),
        madePrecision: text(row.madePrecision),
        madeConfirmed: Boolean(row.madeConfirmed),
        bestBefore: text(row.bestBefore),
        bestPrecision: text(row.bestPrecision),
        bestConfirmed: Boolean(row.bestConfirmed),
        useBy: text(row.useBy),
        usePrecision: text(row.usePrecision),
        useConfirmed: Boolean(row.useConfirmed),
        stock: { hold: String(row.lotHold) },
        inspections: inspected.get(Number(row.lotId)) ?? [],
      },
      product,
    });
    const { costMinor, currency } = row;
    const cost =
      costMinor === null || currency === null ? null : { minor: BigInt(Number(costMinor)), currency: String(currency) };
    return [{ line, movedAt: instantOf(row.movedAt), cost }];
  });
}

const text = (raw: Raw) => (raw === null ? null : String(raw));
