import { decimalText } from '@/shared/units/decimal-text';
import type { AmountOf, StockUnit } from '@/shared/units/stock-unit';

/**
 * The whole amount to the last small unit, for a form that is edited again and for files: `1.84025 kg`, `750 g`, `0.5
 * mL`, `3 pcs`. Always metric, because the small units are. `parseQuantity` reads it back to the same amount (zero and
 * above). `printQuantityExact(milligrams(453_592), 'mg')` is `453.592 g`.
 */
export function printQuantityExact<U extends StockUnit>(amount: AmountOf<U>, unit: U): string {
  const count = BigInt(amount);
  if (unit === 'piece') return `${decimalText(count, 0)} pcs`;
  const large = count >= 1_000_000n || count <= -1_000_000n;
  if (unit === 'mg') return large ? `${decimalText(count, 6)} kg` : `${decimalText(count, 3)} g`;
  return large ? `${decimalText(count, 6)} L` : `${decimalText(count, 3)} mL`;
}
