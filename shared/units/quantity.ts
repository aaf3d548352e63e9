import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';

/** A stock quantity in one named unit: `QuantityOf<'mg'>` is `{ amount: Milligrams; unit: 'mg' }`. */
export type QuantityOf<U extends StockUnit> = U extends StockUnit
  ? { readonly amount: AmountOf<U>; readonly unit: U }
  : never;

/** A stock quantity whose unit is known only when the program runs. Narrow on `unit` to get at the branded amount. */
export type Quantity = QuantityOf<StockUnit>;

/** An amount with its unit; throws when `amount` is no safe integer. `quantity('uL', 500_000n)` is half a litre. */
export function quantity<U extends StockUnit>(unit: U, amount: number | bigint): QuantityOf<U> {
  return { amount: amountOf(unit, amount), unit } as QuantityOf<U>;
}
