import { err, ok, type Result } from '@/shared/result/result';
import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';

/**
 * An amount in the unit its stock is counted in, never less than it was: a volume in microlitres is weighed out, a mass in
 * milligrams measured, by a density in grams per litre, rounded up. The same unit stays as it is. Fails with `no-density`
 * where it is not known, and `not-convertible` where one of the two is counted in pieces. 250 000 µL at 1040 g/L are
 * 260 000 mg.
 */
export function inStockUnit<U extends StockUnit>(
  amount: AmountOf<StockUnit>,
  from: StockUnit,
  to: U,
  gramsPerLitre: number | null,
): Result<AmountOf<U>, { readonly code: 'no-density' | 'not-convertible' }> {
  if (from === to) return ok(amountOf(to, amount));
  if (from === 'piece' || to === 'piece') return err({ code: 'not-convertible' });
  if (gramsPerLitre === null || !(gramsPerLitre > 0)) return err({ code: 'no-density' });
  const [exact, density] = [BigInt(amount), BigInt(gramsPerLitre)];
  // A gram per litre is a milligram per 1000 µL.
  const [above, below] = to === 'mg' ? [exact * density, 1000n] : [exact * 1000n, density];
  return ok(amountOf(to, (above + below - 1n) / below));
}
