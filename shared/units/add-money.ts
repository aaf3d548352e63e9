import { err, type Result } from '@/shared/result/result';
import { addExact, type PastSafeIntegers } from '@/shared/units/add-exact';
import type { CurrencyCode } from '@/shared/units/currency';
import type { MinorUnits } from '@/shared/units/minor-units';

/** A sum of money with its currency. */
export type Money = { readonly minor: MinorUnits; readonly currency: CurrencyCode };

export type DifferentCurrencies = {
  readonly code: 'different-currencies';
  readonly left: CurrencyCode;
  readonly right: CurrencyCode;
};

/**
 * The exact sum of two sums of money, which may be below zero. Fails with `different-currencies` (the book knows no
 * rates) or `past-the-safe-integers`. 12.50 USD and 0.50 USD make 13.00 USD.
 */
export function addMoney(a: Money, b: Money): Result<Money, DifferentCurrencies | PastSafeIntegers> {
  if (a.currency !== b.currency) return err({ code: 'different-currencies', left: a.currency, right: b.currency });
  const sum = addExact(a.minor, b.minor);
  return sum.ok ? { ok: true, value: { minor: sum.value, currency: a.currency } } : sum;
}
