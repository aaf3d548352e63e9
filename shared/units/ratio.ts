/** An exact ratio of integers, `under` above zero. It is not kept in lowest terms. */
export type Ratio = { readonly over: bigint; readonly under: bigint };

/** A ratio; `under` is 1 when left out. `ratio(3n, 4n)` is three quarters. */
export function ratio(over: bigint, under = 1n): Ratio {
  if (under <= 0n) throw new RangeError(`A ratio needs a divisor above zero, got ${under}`);
  return { over, under };
}

/** The exact sum. 1/2 + 1/4 is 6/8. */
export function plus(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.under + b.over * a.under, a.under * b.under);
}

/** The exact product. 1/2 × 1/4 is 1/8. */
export function times(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.over, a.under * b.under);
}

/** The exact quotient; `b` must be above zero. 1/2 ÷ 1/4 is 4/2. */
export function dividedBy(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.under, a.under * b.over);
}

/** Below zero, zero or above zero, as `a` is less than, equal to or greater than `b`. */
export function compareRatios(a: Ratio, b: Ratio): number {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** Whether the ratio is a whole number. 8/4 is. */
export function isWhole(value: Ratio): boolean {
  return value.over % value.under === 0n;
}
