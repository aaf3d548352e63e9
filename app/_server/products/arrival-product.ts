import {
  INSPECTION_COLUMNS,
  inspectionsAlone,
  lotDatesOf,
  policyOf,
  policySelect,
} from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { HoldState, LotFacts } from '@/shared/shelf-life/types/lot-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A lot of the product that the book has already: its dates, and whether it is held. */
export type KnownLot = { lotId: number; code: string; facts: LotFacts; inspections: Inspection[] };

/** What the arrival card needs of a product, to judge what came through the door before it is written. */
export type ArrivalProduct = {
  productId: number;
  name: string;
  maker: string;
  kind: string;
  unit: StockUnit;
  /** Small units a container holds when full. */
  packageSize: number;
  policy: Policy;
  hazards: string[];
  safetySheet: string;
  /** The newest 200. */
  lots: KnownLot[];
};

/** A product as it arrives, or undefined. */
export async function arrivalProduct(book: OpenBook, productId: number): Promise<ArrivalProduct | undefined> {
  const row = await book.read.product.findUnique({
    where: { id: productId },
    select: {
      ...policySelect,
      packageSize: true,
      hazards: true,
      safetySheet: true,
      lots: {
        where: { code: { not: null } },
        orderBy: { stockId: 'desc' },
        take: 200,
        include: {
          stock: { select: { hold: true } },
          inspections: {
            where: { containerId: null },
            select: INSPECTION_COLUMNS,
          },
        },
      },
    },
  });
  if (!row) return undefined;
  return {
    productId: row.id,
    name: row.name,
    maker: row.maker,
    kind: row.kind,
    unit: row.unit as StockUnit,
    packageSize: Number(row.packageSize),
    policy: policyOf(row),
    hazards: row.hazards.split(',').filter(Boolean),
    safetySheet: row.safetySheet,
    lots: row.lots.map((lot) => ({
      lotId: lot.stockId,
      code: lot.code ?? '',
      facts: { id: String(lot.stockId), code: lot.code ?? '', hold: lot.stock.hold as HoldState, ...lotDatesOf(lot) },
      inspections: inspectionsAlone(lot.inspections),
    })),
  };
}
