import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export function sayAmount(amount: number, unit: StockUnit, prefer: UnitSystem): string {
  return printQuantity(amountOf(unit, amount), unit, { prefer });
}

/** An amount on hand: never more than there is. */
export function sayLeft(amount: number, unit: StockUnit, prefer: UnitSystem): string {
  return printQuantity(amountOf(unit, amount), unit, { prefer, rounding: 'down' });
}
