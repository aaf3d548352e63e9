/** A value with its share of belief. */
export type Weighed = { readonly value: number; readonly weight: number };

/**
 * For each share, 0 to 1, the least value that so much of the weight does not exceed. Infinite values count, so a quantile
 * may be infinite. NaN for nothing. Half of 1, 2 and 9 in equal weights is 2.
 */
export function quantilesOf<const S extends readonly number[]>(
  values: readonly Weighed[],
  shares: S,
): { readonly [At in keyof S]: number } {
  const sorted = [...values].sort((a, b) => a.value - b.value);
  const whole = sorted.reduce((sum, { weight }) => sum + weight, 0);
  const found = shares.map((share) => {
    let below = 0;
    for (const { value, weight } of sorted) {
      below += weight;
      if (below >= share * whole - 1e-12) return value;
    }
    return sorted.at(-1)?.value ?? Number.NaN;
  });
  return found as { [At in keyof S]: number };
}
