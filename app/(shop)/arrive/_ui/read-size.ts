import type { Echo } from '@/app/_ui/field/field-shell';
import { readAnyQuantity } from '@/app/(shop)/arrive/size-text';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a typed amount of a known kind is understood as. */
export function readSize(text: string, unit: StockUnit, prefer: UnitSystem): Echo {
  const read = parseQuantity(text, { unit, prefer });
  if (!read.ok) return { ok: false, says: sayQuantityError(read.error) };
  return { ok: true, says: sayBoth(read.value, unit, prefer) };
}

/** What a typed amount is understood as where its unit decides how the material is counted. */
export function readNewSize(text: string, prefer: UnitSystem): Echo {
  const read = readAnyQuantity(text, prefer);
  if (!read.ok) return { ok: false, says: sayQuantityError(read.error) };
  const { unit, amount } = read.value;
  const counted = { mg: 'by weight', uL: 'by volume', piece: 'by the piece' }[unit];
  return { ok: true, says: `${sayBoth(amount, unit, prefer)} It is counted ${counted} from now on.` };
}

function sayBoth(amount: number, unit: StockUnit, prefer: UnitSystem): string {
  const exact = amountOf(unit, amount);
  const first = printQuantity(exact, unit, { prefer });
  const other = printQuantity(exact, unit, { prefer: prefer === 'metric' ? 'imperial' : 'metric' });
  return first === other ? `${first}.` : `${first}, that is ${other}.`;
}
