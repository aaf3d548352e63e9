import type { Echo } from '@/app/_ui/field/field-shell';
import { sayAmount } from '@/app/(shop)/pull/_ui/say-amount';
import { err, ok, type Result } from '@/shared/result/result';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { StockMeasureName } from '@/shared/units/stock-measures';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

const BARE: Record<UnitSystem, Record<StockUnit, { measure: StockMeasureName; words: string }>> = {
  metric: {
    mg: { measure: 'g', words: 'grams' },
    uL: { measure: 'mL', words: 'millilitres' },
    piece: { measure: 'piece', words: 'pieces' },
  },
  imperial: {
    mg: { measure: 'oz', words: 'ounces' },
    uL: { measure: 'fl oz', words: 'fluid ounces' },
    piece: { measure: 'piece', words: 'pieces' },
  },
};

/** What a number without a unit is read as at the bench: `grams`. The echo under the field always names the unit. */
export function bareWords(unit: StockUnit, prefer: UnitSystem): string {
  return BARE[prefer][unit].words;
}

/** An amount typed at the bench, in the small unit, or what is wrong with it in words. */
export function readAmount(text: string, unit: StockUnit, prefer: UnitSystem): Result<number, string> {
  const read = parseQuantity(text, { unit, prefer, bareUnit: BARE[prefer][unit].measure });
  return read.ok ? ok(read.value) : err(sayQuantityError(read.error));
}

/** What stands under the field. */
export function echoAmount(text: string, unit: StockUnit, prefer: UnitSystem): Echo {
  const read = readAmount(text, unit, prefer);
  return read.ok
    ? { ok: true, says: `Reads as ${sayAmount(read.value, unit, prefer)}.` }
    : { ok: false, says: read.error };
}
