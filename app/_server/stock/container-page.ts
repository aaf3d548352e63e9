import { holdWhy } from '@/app/_server/pull/hold-why';
import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';
import type { CurrencyCode } from '@/shared/units/currency';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

export type PhotoLine = { file: string; width: number; height: number; caption: string };
export type InspectionLine = {
  id: number;
  kind: 'inspection' | 'test-pour';
  madeOn: string;
  passed: boolean;
  validUntil: string | null;
  method: string;
  note: string;
  massMg: number | null;
  roomTenthsC: number | null;
  minutes: number | null;
  result: string;
  /** The other lot of a pair that was tried together, and the one container of it that was. */
  pairLot: { lotId: number; code: string | null; product: string; container: string | null } | null;
  photo: string | null;
  /** The one container it speaks for, or the whole lot. */
  container: string | null;
};

export type ContainerPage = {
  line: ContainerLine;
  sisters: ContainerLine[];
  photos: PhotoLine[];
  inspections: InspectionLine[];
  hazards: string[];
  safetySheet: string;
  /** What was written when it, or its lot, was held; empty where nothing was. */
  heldBecause: { container: string; lot: string };
  /** For computing a volume from a weight. */
  densityGramsPerLitre: number | null;
  cost: { minor: MinorUnits; currency: CurrencyCode } | null;
};

/** Everything about one container but its history. */
export async function containerPage(book: OpenBook, label: string): Promise<ContainerPage | undefined> {
  const row = await book.read.container.findFirst({
    where: { stock: { label } },
    select: {
      ...judgeableSelect,
      costMinor: true,
      currency: true,
      product: {
        select: { ...judgeableSelect.product.select, hazards: true, safetySheet: true, densityGramsPerLitre: true },
      },
    },
  });
  if (!row) return undefined;
  const line = containerLine(row);
  const { container, lot } = line.candidate;
  const [sisters, photos, inspections, ownWhy, lotWhy] = await Promise.all([
    book.read.container.findMany({
      where: { lotId: line.lotId, stockId: { not: line.stockId } },
      select: judgeableSelect,
      take: 50,
      orderBy: { stockId: 'asc' },
    }),
    photosOf(book, line.stockId),
    inspectionsOf(book, line.lotId),
    holdWhy(book.read, line.stockId, container.hold),
    holdWhy(book.read, line.lotId, lot.hold),
  ]);
  return {
    line,
    sisters: sisters.map(containerLine),
    photos,
    inspections: inspections.filter((each) => each.container === null || each.container === line.label),
    hazards: row.product.hazards.split(',').filter(Boolean),
    safetySheet: row.product.safetySheet,
    heldBecause: { container: ownWhy, lot: lotWhy },
    densityGramsPerLitre: row.product.densityGramsPerLitre,
    cost:
      row.costMinor === null || row.currency === null
        ? null
        : { minor: minorUnits(row.costMinor), currency: row.currency as CurrencyCode },
  };
}

/** The photos of a thing, newest first. */
export function photosOf(book: OpenBook, stockId: number): Promise<PhotoLine[]> {
  return book.read.photo.findMany({
    where: { stockId },
    orderBy: { id: 'desc' },
    select: { file: true, width: true, height: true, caption: true },
  });
}

/** The inspections and test pours of a lot and its containers, newest first. */
export async function inspectionsOf(book: OpenBook, lotId: number): Promise<InspectionLine[]> {
  const rows = await book.read.inspection.findMany({
    where: { lotId },
    orderBy: { id: 'desc' },
    select: {
      id: true,
      kind: true,
      madeOn: true,
      passed: true,
      validUntil: true,
      method: true,
      note: true,
      massMg: true,
      roomTenthsC: true,
      minutes: true,
      result: true,
      pairLot: { select: { stockId: true, code: true, product: { select: { name: true } } } },
      photo: { select: { file: true } },
      container: { select: { stock: { select: { label: true } } } },
      // Two lots tried together have a row each, of one entry.
      entry: {
        select: {
          inspections: { select: { id: true, container: { select: { stock: { select: { label: true } } } } } },
        },
      },
    },
  });
  return rows.map(({ entry, ...row }) => ({
    ...row,
    kind: row.kind === 'test-pour' ? ('test-pour' as const) : ('inspection' as const),
    massMg: row.massMg === null ? null : Number(row.massMg),
    pairLot: row.pairLot && {
      lotId: row.pairLot.stockId,
      code: row.pairLot.code,
      product: row.pairLot.product.name,
      container: entry.inspections.find(({ id }) => id !== row.id)?.container?.stock.label ?? null,
    },
    photo: row.photo?.file ?? null,
    container: row.container?.stock.label ?? null,
  }));
}
