import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { walkInTheWay } from '@/app/_server/stocktake/walk-in-the-way';

/**
 * A walk that was posted or given up goes on again once that is reversed, unless another goes on by now in its place,
 * inside it or around it: two walks of one place would both be posted.
 */
export async function undoClosedStocktake(pen: Pen, { id }: { id: number }): Promise<Refusal | undefined> {
  const walk = await pen.tx.stocktake.findFirst({
    where: { closedById: id },
    select: { id: true, placeId: true, place: { select: { name: true } } },
  });
  if (!walk) return undefined;
  const place = await walkInTheWay(pen.tx, walk.placeId, walk.id);
  return place === undefined ? undefined : { code: 'stocktake-goes-on', facts: { place, again: walk.place.name } };
}
