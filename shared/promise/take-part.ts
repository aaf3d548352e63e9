import { countsAs } from '@/shared/promise/counts-as';
import { inUnit } from '@/shared/promise/in-unit';
import type { MaterialNeed, OnHand, Part } from '@/shared/promise/material-need';
import { allocate } from '@/shared/units/allocate';
import type { MinorUnits } from '@/shared/units/minor-units';

/** What is left of a promise, and what that cost. */
type Held = { left: number; cost?: MinorUnits | undefined };

/**
 * Some of a promise for a need that still wants so much, at most so much of the need's unit; what is taken is taken off the
 * promise.
 */
export function takePart(
  container: OnHand,
  promise: Held,
  need: MaterialNeed,
  { wants, most }: { wants: number; most: number },
): Part | undefined {
  const units = { from: container.unit, to: need.unit, density: container.density };
  const all = countsAs(promise.left, wants, units);
  const amount = Math.min(all ?? 0, most);
  if (all === undefined || amount <= 0) return undefined;
  const stockAmount =
    amount === all
      ? promise.left
      : Math.min(promise.left, inUnit(amount, need.unit, container.unit, container.density, 'up') ?? 0);
  const [cost, rest] = splitCost(promise.cost, stockAmount, promise.left - stockAmount);
  promise.left -= stockAmount;
  promise.cost = rest;
  return { stockId: container.stockId, label: container.label, amount, stockAmount, cost };
}

/** A cost shared by amount between what is taken and the rest, to the last minor unit. 10.00 by 1 and 3: 2.50 and 7.50. */
export function splitCost(
  cost: MinorUnits | undefined,
  taken: number,
  rest: number,
): [MinorUnits | undefined, MinorUnits | undefined] {
  if (cost === undefined || taken + rest === 0) return [cost, cost];
  const shares = allocate(cost, [taken, rest]);
  return shares.ok ? [shares.value[0], shares.value[1]] : [undefined, undefined];
}
