import type { ProductRow } from '@/app/_server/products/product-fields';
import { splitConditions } from '@/app/_server/stock/conditions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Life } from '@/shared/calendar/life';
import type { Precision } from '@/shared/calendar/precision';
import { readOpened } from '@/shared/ledger/opened';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';
import type { Basis, Policy, PolicyKind } from '@/shared/shelf-life/types/policy';
import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';

/** The columns a product's policy is made of. */
export const policySelect = {
  id: true,
  name: true,
  maker: true,
  kind: true,
  unit: true,
  policyKind: true,
  statedLifeCount: true,
  statedLifeUnit: true,
  statedLifeBasis: true,
  openedLifeCount: true,
  openedLifeUnit: true,
  openedLifeBasis: true,
  careWindowDays: true,
  freezingRuins: true,
  storageLeastTenthsC: true,
  storageMostTenthsC: true,
  colourShows: true,
  part: true,
  system: { select: { id: true, name: true } },
} as const;

/** The columns of an inspection that the judge needs. */
export const INSPECTION_COLUMNS = {
  id: true,
  entryId: true,
  madeOn: true,
  passed: true,
  validUntil: true,
  kind: true,
  containerId: true,
  pairLotId: true,
} as const;

/** The columns of a container row that a verdict and a list line need. */
export const judgeableSelect = {
  stockId: true,
  size: true,
  tareMg: true,
  openedLifeCount: true,
  openedLifeUnit: true,
  receivedOn: true,
  stock: {
    select: {
      label: true,
      quantity: true,
      condition: true,
      hold: true,
      opened: true,
      placeId: true,
      place: { select: { name: true, label: true, parent: { select: { name: true } } } },
    },
  },
  lot: {
    select: {
      stockId: true,
      code: true,
      madeOn: true,
      madePrecision: true,
      madeConfirmed: true,
      bestBefore: true,
      bestPrecision: true,
      bestConfirmed: true,
      useBy: true,
      usePrecision: true,
      useConfirmed: true,
      stock: { select: { hold: true } },
      inspections: {
        select: INSPECTION_COLUMNS,
      },
    },
  },
  product: { select: policySelect },
} as const;

type LotDates = {
  madeOn: string | null;
  madePrecision: string | null;
  madeConfirmed: boolean;
  bestBefore: string | null;
  bestPrecision: string | null;
  bestConfirmed: boolean;
  useBy: string | null;
  usePrecision: string | null;
  useConfirmed: boolean;
};

export type PolicyRow = Pick<ProductRow, Exclude<keyof typeof policySelect, 'id' | 'system'>> & {
  id: number;
  system: { id: number; name: string } | null;
};

export type JudgeableRow = {
  stockId: number;
  size: bigint;
  tareMg: bigint | null;
  openedLifeCount: number | null;
  openedLifeUnit: string | null;
  receivedOn: string;
  stock: {
    label: string | null;
    quantity: bigint;
    condition: string;
    hold: string;
    opened: string | null;
    placeId: number | null;
    place: { name: string; label: string; parent: { name: string } | null } | null;
  };
  lot: LotDates & {
    stockId: number;
    code: string | null;
    stock: { hold: string };
    inspections: {
      id: number;
      entryId: number;
      madeOn: string;
      passed: boolean;
      validUntil: string | null;
      kind: string;
      containerId: number | null;
      pairLotId: number | null;
    }[];
  };
  product: PolicyRow;
};

/** A container, ready for the list and for the judge. */
export type ContainerLine = {
  stockId: number;
  lotId: number;
  productId: number;
  label: OwnLabelCode;
  product: string;
  maker: string;
  kind: string;
  unit: StockUnit;
  size: AmountOf<StockUnit>;
  left: AmountOf<StockUnit>;
  tareMg: AmountOf<'mg'> | null;
  receivedOn: CalendarDate;
  lotCode: string | null;
  place: string | null;
  placeLabel: OwnLabelCode | null;
  candidate: Candidate;
};

/** The rows' facts as a container line, with everything the judge needs. */
export function containerLine(row: JudgeableRow): ContainerLine {
  const label = (row.stock.label ?? '') as OwnLabelCode;
  const unit = row.product.unit as StockUnit;
  const place = row.stock.place;
  return {
    stockId: row.stockId,
    lotId: row.lot.stockId,
    productId: row.product.id,
    label,
    product: row.product.name,
    maker: row.product.maker,
    kind: row.product.kind,
    unit,
    size: amountOf(unit, row.size),
    left: amountOf(unit, row.stock.quantity),
    tareMg: row.tareMg === null ? null : amountOf('mg', row.tareMg),
    receivedOn: row.receivedOn as CalendarDate,
    lotCode: row.lot.code,
    place: place ? (place.parent ? `${place.name}, ${place.parent.name}` : place.name) : null,
    placeLabel: (place?.label ?? null) as OwnLabelCode | null,
    candidate: {
      policy: policyOf(row.product),
      lot: {
        id: String(row.lot.stockId),
        code: row.lot.code ?? '',
        hold: row.lot.stock.hold as HoldState,
        ...lotDatesOf(row.lot),
      },
      container: {
        id: String(row.stockId),
        label,
        left: Number(row.stock.quantity),
        opened: readOpened(row.stock.opened) ?? undefined,
        conditions: splitConditions(row.stock.condition),
        hold: row.stock.hold as HoldState,
        statedOpenedLife: lifeOf(row.openedLifeCount, row.openedLifeUnit),
      },
      inspections: inspectionsOf(row.lot.inspections),
    },
  };
}

/** A product row's policy. */
export function policyOf(row: PolicyRow): Policy {
  const { storageLeastTenthsC: least, storageMostTenthsC: most } = row;
  return {
    kind: row.policyKind as PolicyKind,
    statedLife: lifeOf(row.statedLifeCount, row.statedLifeUnit),
    statedLifeBasis: row.statedLifeBasis as Basis,
    openedLife: lifeOf(row.openedLifeCount, row.openedLifeUnit),
    openedLifeBasis: row.openedLifeBasis as Basis,
    careWindowDays: row.careWindowDays,
    freezingRuins: row.freezingRuins,
    storage: least === null || most === null ? undefined : { leastC: least / 10, mostC: most / 10 },
    colourShows: row.colourShows,
    system:
      row.system && row.part
        ? { id: String(row.system.id), name: row.system.name, part: row.part as 'A' | 'B' }
        : undefined,
  };
}

/** A lot row's three dates. */
export function lotDatesOf(row: LotDates): { madeOn?: LabelDate; bestBefore?: LabelDate; useBy?: LabelDate } {
  return {
    madeOn: labelDate(row.madeOn, row.madePrecision, row.madeConfirmed),
    bestBefore: labelDate(row.bestBefore, row.bestPrecision, row.bestConfirmed),
    useBy: labelDate(row.useBy, row.usePrecision, row.useConfirmed),
  };
}

function labelDate(date: string | null, precision: string | null, confirmed: boolean): LabelDate | undefined {
  return date === null
    ? undefined
    : { date: date as CalendarDate, precision: (precision ?? 'day') as Precision, confirmed };
}

function lifeOf(count: number | null, unit: string | null): Life | undefined {
  return count === null || unit === null ? undefined : { count, unit: unit as Life['unit'] };
}

/** Inspection rows as the judge takes them, in the order in which they were written. */
export function inspectionsOf(rows: JudgeableRow['lot']['inspections']): Inspection[] {
  return [...rows].sort((a, b) => a.id - b.id).map((row) => inspectionOf(row));
}

function inspectionOf(row: JudgeableRow['lot']['inspections'][number]): Inspection {
  return {
    id: String(row.id),
    on: row.madeOn as CalendarDate,
    passed: Boolean(row.passed),
    validUntil: (row.validUntil ?? undefined) as CalendarDate | undefined,
    kind: row.kind as Inspection['kind'],
    scope: row.containerId === null ? 'lot' : 'container',
    containerId: row.containerId === null ? undefined : String(row.containerId),
    // Two lots tried together have a row each, of one entry.
    together: row.pairLotId === null ? undefined : { trial: String(row.entryId), lotId: String(row.pairLotId) },
  };
}
