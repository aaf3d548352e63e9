import { err, ok, type Result } from '@/shared/result/result';
import { parseQuantity, type QuantityError } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { type Quantity, quantity } from '@/shared/units/quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * An amount as a field first shows it: the way the shop likes to read it where that reads back to the very same amount,
 * else to the last small unit. 946 353 µL is `1 qt` in an imperial shop, 500 001 µL is `500.001 mL` everywhere.
 */
export function sizeText(amount: number, unit: StockUnit, prefer: UnitSystem): string {
  const exact = amountOf(unit, amount);
  const short = printQuantity(exact, unit, { prefer });
  const back = parseQuantity(short, { unit, prefer });
  return back.ok && back.value === exact ? short : printQuantityExact(exact, unit);
}

/**
 * Reads an amount whose kind is not known yet, weight, volume or pieces, from the unit that was typed. A bare number is
 * refused with `needs-a-unit`. `readAnyQuantity('2.5 kg', 'metric')` is 2 500 000 mg.
 */
export function readAnyQuantity(text: string, prefer: UnitSystem): Result<Quantity, QuantityError> {
  const asMass = parseQuantity(text, { unit: 'mg', prefer });
  if (asMass.ok) return ok(quantity('mg', asMass.value));
  if (asMass.error.code !== 'unit-does-not-fit') return err(asMass.error);
  const unit = asMass.error.found;
  const read = parseQuantity(text, { unit, prefer });
  return read.ok ? ok(quantity(unit, read.value)) : err(read.error);
}
