import { holdWhys } from '@/app/_server/pull/hold-why';
import { INSPECTION_COLUMNS, inspectionsOf, lotDatesOf, policyOf, policySelect } from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { HoldState, LotFacts } from '@/shared/shelf-life/types/lot-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A lot of the product that the book has already: its dates, whether it is held, and what was written with that. */
export type KnownLot = {
  lotId: number;
  code: string;
  facts: LotFacts;
  inspections: Inspection[];
  heldBecause: string;
};

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
  /** The newest 200, and every one that is held: that has to be said however long ago it came first. */
  lots: KnownLot[];
};

/** A product as it arrives, or undefined. */
export async function arrivalProduct(book: OpenBook, productId: number): Promise<ArrivalProduct | undefined> {
  const row = await book.read.product.findUnique({
    where: { id: productId },
    select: { ...policySelect, packageSize: true, hazards: true, safetySheet: true },
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
    lots: await knownLots(book, productId),
  };
}

const NEWEST = 200;

async function knownLots(book: OpenBook, productId: number): Promise<KnownLot[]> {
  const lotsWhere = (where: object, take?: number) =>
    book.read.lot.findMany({
      where: { productId, code: { not: null }, ...where },
      orderBy: { stockId: 'desc' },
      take,
      include: {
        stock: { select: { hold: true } },
        inspections: { where: { containerId: null }, select: INSPECTION_COLUMNS },
      },
    });
  const [newest, held] = await Promise.all([lotsWhere({}, NEWEST), lotsWhere({ stock: { hold: { not: 'free' } } })]);
  const known = new Set(newest.map(({ stockId }) => stockId));
  const whys = await holdWhys(
    book.read,
    held.map(({ stockId }) => stockId),
  );
  return [...newest, ...held.filter(({ stockId }) => !known.has(stockId))].map((lot) => ({
    lotId: lot.stockId,
    code: lot.code ?? '',
    facts: { id: String(lot.stockId), code: lot.code ?? '', hold: lot.stock.hold as HoldState, ...lotDatesOf(lot) },
    inspections: inspectionsOf(lot.inspections),
    heldBecause: whys.get(lot.stockId) ?? '',
  }));
}
