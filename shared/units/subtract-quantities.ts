import { err, type Result } from '@/shared/result/result';
import type { DifferentUnits } from '@/shared/units/add-quantities';
import type { Quantity } from '@/shared/units/quantity';

/** More was taken than there is; `short` is how much is missing, in the small unit. */
export type MoreThanThereIs = { readonly code: 'more-than-there-is'; readonly short: number };

/**
 * What is left of `from` once `taken` is out of it, exactly. Both must be zero or above, so the result is never below
 * zero: taking more fails with `more-than-there-is`. Units as in `addQuantities`: a compile error, or
 * `different-units`. `subtractQuantities(quantity('mg', 5), quantity('mg', 3))` is `{ amount: 2, unit: 'mg' }`.
 */
export function subtractQuantities<Q extends Quantity>(
  from: Q,
  taken: NoInfer<Q>,
): Result<Q, DifferentUnits | MoreThanThereIs> {
  if (from.amount < 0 || taken.amount < 0) throw new RangeError('A quantity to subtract is never below zero');
  if (from.unit !== taken.unit) return err({ code: 'different-units', left: from.unit, right: taken.unit });
  const left = from.amount - taken.amount;
  if (left < 0) return err({ code: 'more-than-there-is', short: -left });
  return { ok: true, value: { ...from, amount: left as Q['amount'] } };
}
