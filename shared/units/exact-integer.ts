/** A safe integer that knows what it counts, so that two different units cannot be mixed by mistake. */
export type ExactInteger<Unit extends string> = number & { readonly __exact: Unit };

/**
 * A branded exact integer from a number or from a stored bigint. Throws a `RangeError` on a fraction, on NaN and
 * outside the safe integers (±9 007 199 254 740 991): by the time a number gets here, each of those is a bug.
 * `exactInteger<'mg'>(750_000n)` is 750 000.
 */
export function exactInteger<Unit extends string>(amount: number | bigint): ExactInteger<Unit> {
  const plain = Number(amount);
  if (!Number.isSafeInteger(plain)) throw new RangeError(`Not an exact integer: ${amount}`);
  // Adding 0 turns -0 into 0, which would otherwise fail an equality test and print a minus sign.
  return (plain + 0) as ExactInteger<Unit>;
}
