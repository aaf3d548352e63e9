import { err, type Result } from '@/shared/result/result';
import { addExact, type PastSafeIntegers } from '@/shared/units/add-exact';
import type { Quantity } from '@/shared/units/quantity';
import type { StockUnit } from '@/shared/units/stock-unit';

export type DifferentUnits = { readonly code: 'different-units'; readonly left: StockUnit; readonly right: StockUnit };

/**
 * The exact sum of two quantities. Units known to differ do not compile; units known only when the program runs fail
 * with `different-units`. Also `past-the-safe-integers`. Nothing is converted: mass and volume meet only through a
 * density. `addQuantities(quantity('mg', 2), quantity('mg', 3))` is `{ amount: 5, unit: 'mg' }`.
 */
export function addQuantities<Q extends Quantity>(a: Q, b: NoInfer<Q>): Result<Q, DifferentUnits | PastSafeIntegers> {
  if (a.unit !== b.unit) return err({ code: 'different-units', left: a.unit, right: b.unit });
  const sum = addExact<Quantity['amount']>(a.amount, b.amount);
  return sum.ok ? { ok: true, value: { ...a, amount: sum.value } } : sum;
}
