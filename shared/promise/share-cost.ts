import { allocate } from '@/shared/units/allocate';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

export type CostShares = {
  /** One for each promise, in their order. */
  readonly promises: readonly MinorUnits[];
  /** What is in it and promised to nobody. */
  readonly free: MinorUnits;
};

/**
 * What was paid for a container, shared by amount among what was used of it, each promise, and the rest: by the largest
 * remainder, so that the shares add up to the price to the last minor unit. A container that holds more than it was sold
 * as is shared by what it holds. Amounts in small units; promises together at most `left`. Throws where they are more.
 *
 * Example: 49.50 paid for 2.5 kg, 2 kg left, promises of 1 kg and 0.5 kg → 19.80 and 9.90, free 9.90, used 9.90.
 */
export function shareCost(
  paid: MinorUnits,
  { size, left, promises }: { size: number; left: number; promises: readonly number[] },
): CostShares {
  const promised = promises.reduce((sum, each) => sum + each, 0);
  if (promised > left) throw new RangeError(`${promised} is promised of ${left}`);
  const whole = Math.max(size, left);
  const shares = allocate(paid, [...promises, left - promised, whole - left]);
  if (!shares.ok) return { promises: promises.map(() => minorUnits(0)), free: minorUnits(0) };
  return { promises: shares.value.slice(0, -2), free: shares.value.at(-2) ?? minorUnits(0) };
}
