import { inUnit } from '@/shared/promise/in-unit';
import type { Coming, MaterialNeed, NeedStanding } from '@/shared/promise/material-need';

/** An order, and how much of it nobody waits for yet. */
export type OrderLeft = Coming & { left: number };

/**
 * What of the orders that are due by its day a need can wait for, in its unit, the orders in the order they are given; and
 * what is missing then. What is waited for is taken off the orders.
 */
export function takeComing(
  { productIds, on, unit }: Pick<MaterialNeed, 'productIds' | 'on' | 'unit'>,
  missing: number,
  orders: readonly OrderLeft[],
): { arriving: NeedStanding['arriving']; rest: number } {
  let rest = missing;
  const arriving = orders.flatMap((order) => {
    if (!productIds.includes(order.productId) || order.on > on) return [];
    const there = inUnit(order.left, order.unit, unit, order.density, 'down') ?? 0;
    const amount = Math.min(there, rest);
    if (amount <= 0) return [];
    order.left -= Math.min(order.left, inUnit(amount, unit, order.unit, order.density, 'up') ?? 0);
    rest -= amount;
    return [{ id: order.id, amount, on: order.on }];
  });
  return { arriving, rest };
}
