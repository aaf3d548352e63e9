import { placeAndBelow } from '@/app/_server/places/place-and-below';
import { openStocktake } from '@/app/_server/stocktake/open-stocktakes';
import type { WriteTransaction } from '@/prisma/open-book';

type Reader = Pick<WriteTransaction, 'stocktake' | 'place'>;

/** The place of another walk that goes on in this place, inside it or around it; undefined where there is none. */
export async function walkInTheWay(tx: Reader, placeId: number, but?: number): Promise<string | undefined> {
  const open = await tx.stocktake.findMany({
    where: { ...openStocktake, ...(but !== undefined && { NOT: { id: but } }) },
    orderBy: { id: 'asc' },
    select: { placeId: true, place: { select: { name: true } } },
  });
  const below = await placeAndBelow(tx, placeId);
  for (const one of open) {
    const overlaps = below.includes(one.placeId) || (await placeAndBelow(tx, one.placeId)).includes(placeId);
    if (overlaps) return one.place.name;
  }
  return undefined;
}
