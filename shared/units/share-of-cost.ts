/**
 * What the part of a thing that is left has cost, minor units, to the nearest; a half goes up. Exact whatever the sizes,
 * because it is reckoned in whole numbers. Nothing left has cost nothing; more left than the size costs more than the whole.
 * Throws when the size is not above zero, or the cost or what is left is below it.
 * `shareOfCost(4500n, { left: 1_000_000n, size: 2_500_000n })` is 1800.
 */
export function shareOfCost(costMinor: bigint, { left, size }: { left: bigint; size: bigint }): number {
  if (size <= 0n || left < 0n || costMinor < 0n) throw new RangeError('A share of a cost is of something.');
  return Number((2n * costMinor * left + size) / (2n * size));
}
