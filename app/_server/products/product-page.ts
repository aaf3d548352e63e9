import type { ProductFields } from '@/app/_server/products/product-fields';
import {
  type ContainerLine,
  containerLine,
  judgeableSelect,
  policyOf,
  policySelect,
} from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';
import type { Policy } from '@/shared/shelf-life/types/policy';
import type { StockUnit } from '@/shared/units/stock-unit';

export type ProductPage = {
  productId: number;
  /** As the form takes it. */
  fields: ProductFields;
  policy: Policy;
  codes: { value: string; packageSize: number | null }[];
  lots: { lotId: number; code: string | null; containers: number }[];
  containers: ContainerLine[];
};

/** Everything about one product but its history. */
export async function productPage(book: OpenBook, productId: number): Promise<ProductPage | undefined> {
  const row = await book.read.product.findUnique({
    where: { id: productId },
    include: {
      system: policySelect.system,
      codes: { select: { value: true, packageSize: true } },
      lots: {
        select: { stockId: true, code: true, _count: { select: { containers: true } } },
        orderBy: { stockId: 'desc' },
        take: 200,
      },
    },
  });
  if (!row) return undefined;
  const containers = await book.read.container.findMany({
    where: { productId, stock: { quantity: { gt: 0 } } },
    select: judgeableSelect,
    orderBy: { stockId: 'asc' },
    take: 200,
  });
  const policy = policyOf(row);
  return {
    productId,
    policy,
    fields: {
      name: row.name,
      maker: row.maker,
      kind: row.kind,
      unit: row.unit as StockUnit,
      densityGramsPerLitre: row.densityGramsPerLitre ?? undefined,
      packageSize: Number(row.packageSize),
      tareMg: row.tareMg === null ? undefined : Number(row.tareMg),
      policyKind: policy.kind,
      statedLife: policy.statedLife,
      statedLifeBasis: policy.statedLifeBasis,
      openedLife: policy.openedLife,
      openedLifeBasis: policy.openedLifeBasis,
      careWindowDays: row.careWindowDays,
      freezingRuins: row.freezingRuins,
      storageLeastTenthsC: row.storageLeastTenthsC ?? undefined,
      storageMostTenthsC: row.storageMostTenthsC ?? undefined,
      colourShows: row.colourShows,
      system: policy.system ? { name: policy.system.name, part: policy.system.part } : undefined,
      hazards: row.hazards.split(',').filter(Boolean),
      safetySheet: row.safetySheet,
      note: row.note,
    },
    codes: row.codes.map((code) => ({
      value: code.value,
      packageSize: code.packageSize === null ? null : Number(code.packageSize),
    })),
    lots: row.lots.map((lot) => ({ lotId: lot.stockId, code: lot.code, containers: lot._count.containers })),
    containers: containers.map(containerLine),
  };
}

export type ProductChoice = {
  id: number;
  name: string;
  maker: string;
  kind: string;
  unit: StockUnit;
  packageSize: number;
  policy: Policy;
};

/** Every product, for choosing one, in order of name. */
export async function listProducts(book: OpenBook): Promise<ProductChoice[]> {
  const rows = await book.read.product.findMany({
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    select: { ...policySelect, packageSize: true },
  });
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    maker: row.maker,
    kind: row.kind,
    unit: row.unit as StockUnit,
    packageSize: Number(row.packageSize),
    policy: policyOf(row),
  }));
}

/** The names of the resin systems in the book. */
export async function listSystems(book: OpenBook): Promise<string[]> {
  const rows = await book.read.resinSystem.findMany({
    where: { products: { some: {} } },
    orderBy: { name: 'asc' },
    select: { name: true },
  });
  return rows.map((row) => row.name);
}
