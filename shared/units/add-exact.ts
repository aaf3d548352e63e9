import { err, ok, type Result } from '@/shared/result/result';
import type { ExactInteger } from '@/shared/units/exact-integer';

/** The sum would leave the safe integers, so it could not be exact. */
export type PastSafeIntegers = { readonly code: 'past-the-safe-integers' };

/**
 * The exact sum of two amounts of one unit; adding milligrams to microlitres does not compile. Fails with
 * `past-the-safe-integers` beyond ±9 007 199 254 740 991. `addExact(milligrams(2), milligrams(3))` is 5 mg.
 */
export function addExact<A extends ExactInteger<string>>(a: A, b: NoInfer<A>): Result<A, PastSafeIntegers> {
  const sum = a + b;
  return Number.isSafeInteger(sum) ? ok(sum as A) : err({ code: 'past-the-safe-integers' });
}
