import type { OpenBook } from '@/prisma/open-book';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import type { StockUnit } from '@/shared/units/stock-unit';

/** The kinds of material that are put on in coats. */
export const FINISH_KINDS: readonly string[] = [
  'hardwax-oil',
  'two-part-oil',
  'oil-finish',
  'varnish',
  'waterborne',
  'lacquer',
  'pre-catalysed-lacquer',
  'shellac-mixed',
];

/** A finish that can be planned, with what its sheet says. */
export type FinishChoice = {
  id: number;
  name: string;
  kind: string;
  unit: StockUnit;
  densityGramsPerLitre: number | null;
  hazards: string[];
  safetySheet: string;
  sheet: FinishSheet | null;
};

/** The finishes of the book, in order of name. */
export async function listFinishes(book: OpenBook): Promise<FinishChoice[]> {
  const rows = await book.read.product.findMany({
    where: { kind: { in: [...FINISH_KINDS] }, unit: { not: 'piece' } },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    select: {
      id: true,
      name: true,
      kind: true,
      unit: true,
      densityGramsPerLitre: true,
      hazards: true,
      safetySheet: true,
      sheets: { where: { entry: { reversedBy: null } }, orderBy: { id: 'desc' }, take: 1, select: { facts: true } },
    },
  });
  return rows.map(({ sheets, hazards, unit, ...row }) => ({
    ...row,
    unit: unit as StockUnit,
    hazards: hazards.split(',').filter(Boolean),
    sheet: sheets[0] ? (JSON.parse(sheets[0].facts) as FinishSheet) : null,
  }));
}
