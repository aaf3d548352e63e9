import { markSelect, readMarks } from '@/app/_server/shapes/kept-marks';
import { readOutline } from '@/app/_server/shapes/kept-outline';
import { widthsOfOutline } from '@/app/_server/shapes/widths-of-outline';
import { keptFlags } from '@/app/_server/stock/piece-fields';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { nanometres } from '@/shared/units/nanometres';

/** Slabs are asked for by their wood, how thick they are at least, and whether they are still to be had. */
export type WallAsk = {
  species?: string;
  leastThicknessNm?: number;
  freeOnly: boolean;
  order: 'largest' | 'thickest' | 'species' | 'newest';
};

/** More are not drawn on one wall. */
const MOST_ON_WALL = 500;

const ORDERS: Record<WallAsk['order'], Prisma.Sql> = {
  // In square millimetres: in square nanometres the product leaves the range of an integer.
  largest: Prisma.sql`(w."lengthNm" / 1000000) * (w."widthMiddleNm" / 1000000) DESC, w."stockId"`,
  thickest: Prisma.sql`w."thicknessNm" DESC, w."stockId"`,
  species: Prisma.sql`w."species", w."flitch", w."flitchNumber", w."stockId"`,
  newest: Prisma.sql`w."stockId" DESC`,
};

const select = {
  stockId: true,
  species: true,
  lengthNm: true,
  widthStartNm: true,
  widthMiddleNm: true,
  widthEndNm: true,
  thicknessNm: true,
  flags: true,
  shape: { select: { outline: true, source: true } },
  marks: { where: { removedById: null }, select: markSelect, orderBy: { id: 'asc' } },
  stock: { select: { label: true, hold: true, ownerJob: { select: { name: true } } } },
} as const;

/** Slabs in stock with what a small drawing of each needs, at most 500; `total` is how many there are. */
export async function slabsOnWall(book: OpenBook, { species, leastThicknessNm, freeOnly, order }: WallAsk) {
  const wanted = Prisma.sql`"Piece" w JOIN "Stock" s ON s."id" = w."stockId"
    WHERE w."form" = 'slab' AND s."quantity" > 0
    ${species ? Prisma.sql`AND w."species" = ${species}` : Prisma.empty}
    ${leastThicknessNm ? Prisma.sql`AND w."thicknessNm" >= ${BigInt(leastThicknessNm)}` : Prisma.empty}
    ${freeOnly ? Prisma.sql`AND s."hold" = 'free' AND s."ownerJobId" IS NULL` : Prisma.empty}`;
  const found = await book.read.$queryRaw<{ id: number }[]>`
    SELECT w."stockId" AS "id" FROM ${wanted} ORDER BY ${ORDERS[order]} LIMIT ${MOST_ON_WALL}`;
  const [count] = await book.read.$queryRaw<{ total: number | bigint }[]>`SELECT COUNT(*) AS "total" FROM ${wanted}`;
  const ids = found.map((row) => row.id);
  const rows = await book.read.piece.findMany({ where: { stockId: { in: ids } }, select });
  const byId = new Map(rows.map((row) => [row.stockId, row]));
  return {
    total: Number(count?.total ?? 0),
    slabs: ids.flatMap((id) => {
      const row = byId.get(id);
      if (!row) return [];
      const outline = row.shape ? readOutline(row.shape.outline) : null;
      return {
        stockId: id,
        label: (row.stock.label ?? '') as OwnLabelCode,
        species: row.species,
        lengthNm: nanometres(row.lengthNm),
        widthStartNm: nanometres(row.widthStartNm),
        widthMiddleNm: nanometres(row.widthMiddleNm),
        widthEndNm: nanometres(row.widthEndNm),
        thicknessNm: nanometres(row.thicknessNm),
        flags: keptFlags(row.flags),
        outline,
        usable: outline && widthsOfOutline(outline, row.shape?.source as 'stations' | 'photo' | 'cut'),
        marks: readMarks(row.marks),
        promisedTo: row.stock.ownerJob?.name ?? null,
        held: row.stock.hold !== 'free',
      };
    }),
  };
}

export type WallSlab = Awaited<ReturnType<typeof slabsOnWall>>['slabs'][number];

/** The woods that slabs in stock are of. */
export async function woodsOnWall(book: OpenBook): Promise<string[]> {
  const rows = await book.read.piece.findMany({
    where: { form: 'slab', stock: { quantity: { gt: 0 } } },
    distinct: ['species'],
    orderBy: { species: 'asc' },
    select: { species: true },
    take: 200,
  });
  return rows.map((row) => row.species);
}
