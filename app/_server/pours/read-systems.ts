import { newestSheet, type SheetLine, sheetsOf } from '@/app/_server/pours/sheet-of';
import type { OpenBook } from '@/prisma/open-book';
import type { Life } from '@/shared/calendar/life';

/** A product that is one part of a system, with how long it keeps. */
type SystemPart = {
  productId: number;
  name: string;
  part: 'A' | 'B';
  densityGramsPerLitre: number | null;
  statedLife: Life | null;
  openedLife: Life | null;
};

export type SystemLine = { id: number; name: string; parts: SystemPart[]; sheet: SheetLine | null };

const systemSelect = {
  id: true,
  name: true,
  products: {
    orderBy: { id: 'asc' },
    select: {
      id: true,
      name: true,
      part: true,
      densityGramsPerLitre: true,
      statedLifeCount: true,
      statedLifeUnit: true,
      openedLifeCount: true,
      openedLifeUnit: true,
    },
  },
} as const;

type SystemRow = {
  id: number;
  name: string;
  products: {
    id: number;
    name: string;
    part: string | null;
    densityGramsPerLitre: number | null;
    statedLifeCount: number | null;
    statedLifeUnit: string | null;
    openedLifeCount: number | null;
    openedLifeUnit: string | null;
  }[];
};

/** Every resin system by name, each with its parts and the sheet that counts. */
export async function readSystems(book: OpenBook): Promise<SystemLine[]> {
  const rows = await book.read.resinSystem.findMany({
    where: { products: { some: {} } },
    orderBy: { name: 'asc' },
    select: systemSelect,
  });
  return Promise.all(rows.map(async (row) => systemLine(row, await newestSheet(book.read, row.id))));
}

/** One system with all its sheets, the one that counts first. */
export async function systemPage(
  book: OpenBook,
  systemId: number,
): Promise<{ system: SystemLine; older: SheetLine[] } | undefined> {
  const row = await book.read.resinSystem.findUnique({ where: { id: systemId }, select: systemSelect });
  if (!row) return undefined;
  const [newest, ...older] = await sheetsOf(book.read, systemId);
  return { system: systemLine(row, newest), older };
}

function systemLine(row: SystemRow, sheet: SheetLine | undefined): SystemLine {
  const life = (count: number | null, unit: string | null) =>
    count === null || unit === null ? null : { count, unit: unit as Life['unit'] };
  return {
    id: row.id,
    name: row.name,
    sheet: sheet ?? null,
    parts: row.products.flatMap((each) =>
      each.part === 'A' || each.part === 'B'
        ? {
            productId: each.id,
            name: each.name,
            part: each.part,
            densityGramsPerLitre: each.densityGramsPerLitre,
            statedLife: life(each.statedLifeCount, each.statedLifeUnit),
            openedLife: life(each.openedLifeCount, each.openedLifeUnit),
          }
        : [],
    ),
  };
}
