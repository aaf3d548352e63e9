import { printQuantity } from '@/shared/units/print-quantity';
import type { AmountOf, StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is left and of how much, to stand on either side of `of`: `1.8 kg` of `2.5 kg`, but `25` of `50 pieces`. */
export function sayLeftOf(
  { left, size, unit }: { left: AmountOf<StockUnit>; size: AmountOf<StockUnit>; unit: StockUnit },
  prefer: UnitSystem,
): { left: string; size: string } {
  return {
    left: unit === 'piece' ? left.toLocaleString('en') : printQuantity(left, unit, { prefer, rounding: 'down' }),
    size: printQuantity(size, unit, { prefer }),
  };
}
