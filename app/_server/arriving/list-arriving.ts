import type { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { CurrencyCode } from '@/shared/units/currency';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import type { StockUnit } from '@/shared/units/stock-unit';

/** Something ordered that has not come yet. */
export type ArrivingLine = {
  id: number;
  entryId: number;
  product: { id: number; name: string; densityGramsPerLitre: number | null } | null;
  /** What comes, where it is no product. */
  words: string;
  unit: StockUnit;
  amount: number;
  dueOn: CalendarDate;
  supplier: string;
  cost: { minor: MinorUnits; currency: CurrencyCode } | null;
};

/** Orders that are still to come, the first due first. An order whose entry was reversed is none. */
export async function listArriving(
  tx: Pick<WriteTransaction, 'arriving'>,
  where: Prisma.ArrivingWhereInput = {},
): Promise<ArrivingLine[]> {
  const rows = await tx.arriving.findMany({
    where: { AND: [where, STILL_TO_COME] },
    orderBy: [{ dueOn: 'asc' }, { id: 'asc' }],
    select: {
      id: true,
      entryId: true,
      words: true,
      amount: true,
      dueOn: true,
      supplier: true,
      costMinor: true,
      currency: true,
      product: { select: { id: true, name: true, unit: true, densityGramsPerLitre: true } },
    },
  });
  return rows.map(({ product, ...row }) => ({
    id: row.id,
    entryId: row.entryId,
    product: product && { id: product.id, name: product.name, densityGramsPerLitre: product.densityGramsPerLitre },
    words: row.words,
    unit: (product?.unit ?? 'piece') as StockUnit,
    amount: Number(row.amount),
    dueOn: row.dueOn as CalendarDate,
    supplier: row.supplier,
    cost:
      row.costMinor === null || row.currency === null
        ? null
        : { minor: minorUnits(row.costMinor), currency: row.currency as CurrencyCode },
  }));
}

/** Written by an entry that stands, and not closed by one that stands. */
export const STILL_TO_COME: Prisma.ArrivingWhereInput = {
  entry: { reversedBy: null },
  OR: [{ closedById: null }, { closedBy: { reversedBy: { isNot: null } } }],
};
