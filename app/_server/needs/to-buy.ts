import type { Offers } from '@/app/_server/needs/offers-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type Packages, packagesToBuy } from '@/shared/promise/packages-to-buy';
import { shareOfPrice } from '@/shared/promise/share-of-price';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What is to be bought: of which product, how much, in which sizes, in the product's own unit. */
export type ToBuy = {
  productId: number | null;
  product: string;
  unit: StockUnit;
  short: number;
  /** The sizes it is sold in, and what was paid; none of wood, which is bought by the piece. */
  offer: Offers | undefined;
  packages: Packages | undefined;
  /** The price of all packages, at what was last paid. */
  price: MinorUnits | undefined;
  lastPaidOn: CalendarDate | undefined;
  /** It must be here by. */
  by: CalendarDate;
  /** And good to this day at the least; for so many days more, and no Care is said of it. */
  goodTo: CalendarDate;
  careDays: number;
  /** It has no life to mind: hardware, abrasives, wood. */
  keeps: boolean;
};

/** What is to be bought of a product, with the packages that are enough for it. */
export function toBuy(line: Omit<ToBuy, 'packages' | 'price' | 'lastPaidOn'> & { offer: Offers | undefined }): ToBuy {
  const packages = packagesToBuy(line.short, line.offer?.offers ?? []);
  return { ...line, packages, price: packages && priceOf(packages, line.offer), lastPaidOn: line.offer?.last?.on };
}

/** Several purchases of one thing as one: packages for the sum, here by the first day, good to the last. */
export function joinToBuy([first, ...rest]: readonly [ToBuy, ...ToBuy[]]): ToBuy {
  const all = [first, ...rest];
  const days = all.map((each) => each.by).sort();
  const joined = {
    ...first,
    short: all.reduce((sum, each) => sum + each.short, 0),
    by: days[0] ?? first.by,
    goodTo:
      all
        .map((each) => each.goodTo)
        .sort()
        .at(-1) ?? first.goodTo,
  };
  if (first.productId !== null) return toBuy(joined);
  const prices = all.map((each) => each.price);
  const price = prices.every((each) => each !== undefined)
    ? minorUnits(prices.reduce<number>((sum, each) => sum + (each ?? 0), 0))
    : undefined;
  return { ...joined, price, packages: pieces(joined.short, price) };
}

/** So many pieces of wood. */
export function pieces(count: number, price: MinorUnits | undefined): Packages {
  return { packs: [{ size: 1, count }], amount: count, price };
}

/** Packages at what each size last cost; where one has no price of its own, by the last price of any size. */
function priceOf({ packs, price }: Packages, offer: Offers | undefined): MinorUnits | undefined {
  if (price !== undefined || !offer?.last) return price;
  const { last, offers } = offer;
  return minorUnits(
    packs.reduce((sum, { size, count }) => {
      const paid = offers.find((each) => each.size === size)?.paid ?? shareOfPrice(size, last);
      return sum + paid * count;
    }, 0),
  );
}
