import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { PackageOffer } from '@/shared/promise/packages-to-buy';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

/** What a product is sold in, and what was last paid for it, in the book's money. */
export type Offers = {
  offers: PackageOffer[];
  /** The newest purchase with a price; none where there was none. */
  last: { paid: MinorUnits; size: number; on: CalendarDate } | undefined;
};

/** The sizes each product is sold in: its own, those of its codes, and those that came in, with what was last paid. */
export async function offersOf(
  tx: Pick<WriteTransaction, 'product' | 'code' | 'container'>,
  productIds: readonly number[],
  currency: string,
): Promise<Map<number, Offers>> {
  const within = { productId: { in: [...productIds] } };
  const [products, codes, bought] = await Promise.all([
    tx.product.findMany({ where: { id: { in: [...productIds] } }, select: { id: true, packageSize: true } }),
    tx.code.findMany({
      where: { ...within, packageSize: { not: null } },
      select: { productId: true, packageSize: true },
    }),
    tx.container.findMany({
      where: within,
      orderBy: [{ receivedOn: 'desc' }, { stockId: 'desc' }],
      select: { productId: true, size: true, costMinor: true, currency: true, receivedOn: true },
    }),
  ]);
  return new Map(
    products.map(({ id, packageSize }) => {
      const paidFor = new Map<number, MinorUnits | undefined>([[Number(packageSize), undefined]]);
      for (const code of codes) {
        const size = Number(code.packageSize ?? 0n);
        if (code.productId === id && !paidFor.has(size)) paidFor.set(size, undefined);
      }
      let last: Offers['last'];
      for (const row of bought) {
        const size = Number(row.size);
        if (row.productId !== id || size <= 0) continue;
        const paid = row.costMinor !== null && row.currency === currency ? minorUnits(row.costMinor) : undefined;
        if (paidFor.get(size) === undefined) paidFor.set(size, paid);
        if (paid !== undefined) last ??= { paid, size, on: row.receivedOn as CalendarDate };
      }
      return [id, { offers: [...paidFor].map(([size, paid]) => ({ size, paid })), last }];
    }),
  );
}
