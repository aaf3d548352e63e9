import { err, ok, type Result } from '@/shared/result/result';
import { mostInAContainer } from '@/shared/units/limits';
import { firstPartOutOfLine } from '@/shared/units/parts-follow';
import { compareRatios, isWhole, plus, type Ratio, ratio, times } from '@/shared/units/ratio';
import { type Part, type ReadError, readParts } from '@/shared/units/read-parts';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import {
  type StockMeasure,
  type StockMeasureName,
  stockMeasure,
  stockMeasureSpelled,
} from '@/shared/units/stock-measures';
import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type QuantityError =
  | ReadError
  /** A bare number, where more than one unit could be meant. */
  | { readonly code: 'needs-a-unit'; readonly at: number }
  | { readonly code: 'unknown-unit'; readonly at: number; readonly written: string }
  /** A mass for a liquid counted by volume, `oz` for `fl oz`, kilograms of a thing counted in pieces. */
  | {
      readonly code: 'unit-does-not-fit';
      readonly at: number;
      readonly written: string;
      readonly wanted: StockUnit;
      readonly found: StockUnit;
    }
  /**
   * `2,500 kg` is 2.5 kg to one maker and 2500 kg to another; both readings are in the small unit, `decimal` maybe
   * rounded.
   */
  | { readonly code: 'two-readings'; readonly at: number; readonly decimal: bigint; readonly grouped: bigint }
  | { readonly code: 'improper-fraction'; readonly at: number }
  /** The second part of a compound does not follow the first: `4 oz 1 lb`, `1 lb 20 oz`, `1 kg 4 oz`. */
  | { readonly code: 'parts-do-not-follow'; readonly at: number }
  | { readonly code: 'finer-than-the-book'; readonly at: number }
  | { readonly code: 'absurd'; readonly at: number; readonly most: number };

export type QuantityReading<U extends StockUnit> = {
  readonly unit: U;
  readonly prefer: UnitSystem;
  /** The unit a bare number is in. Without it a bare number is refused, except for pieces. */
  readonly bareUnit?: StockMeasureName;
};

/**
 * Reads a stock quantity as a maker writes it, into whole milligrams, microlitres or pieces: `2.5 kg`, `2,5 kg`, `12
 * oz`, `1 lb 4 oz`, `1/2 gal`, `1 1/2 lb`, `8 fl oz`, `3 pcs`. Zero is allowed, below zero is not. A point is always
 * the decimal mark; a comma before exactly three digits groups thousands for pieces and in a workshop that prefers
 * imperial, and is refused as `two-readings` otherwise.
 *
 * Exactness: a metric decimal is taken exactly or refused as `finer-than-the-book`; pounds, ounces, gallons and their
 * parts, and any fraction, round to the nearest small unit (half away from zero), and are refused only when that leaves
 * nothing of something. Sizes: international pound and inch (1959), US gallon of 231 in³. At most 1000 kg, 1000 L or 1
 * 000 000 pieces, beyond it `absurd`. Never throws; `at` counts characters from the start of `text`. `parseQuantity('1
 * lb 4 oz', { unit: 'mg', prefer: 'imperial' })` is 566 990 mg (20 oz = 566 990.4625 mg).
 */
export function parseQuantity<U extends StockUnit>(
  text: string,
  { unit, prefer, bareUnit }: QuantityReading<U>,
): Result<AmountOf<U>, QuantityError> {
  const read = readParts(text);
  if (!read.ok) return read;
  const parts = read.value;
  const measured: { count: Ratio; size: Ratio; system: UnitSystem }[] = [];
  let exact = true;
  for (const part of parts) {
    if (part.hyphenAt !== undefined) return err({ code: 'not-a-number', at: part.hyphenAt });
    const found = measureOf(part, parts.length, unit, bareUnit);
    if (!found.ok) return found;
    const { size, system } = found.value;
    const count = countOf(part, size, prefer === 'imperial' || unit === 'piece');
    if (!count.ok) return count;
    exact &&= part.number.kind === 'decimal' && system === 'metric';
    measured.push({ count: count.value, size, system });
  }
  const outOfLine = firstPartOutOfLine(measured);
  if (outOfLine !== undefined) return err({ code: 'parts-do-not-follow', at: parts[outOfLine]?.at ?? 0 });

  const at = parts[0]?.at ?? 0;
  const total = measured.reduce((sum, { count, size }) => plus(sum, times(count, size)), ratio(0n));
  const most = mostInAContainer(unit);
  if (compareRatios(total, ratio(BigInt(most))) > 0) return err({ code: 'absurd', at, most });
  const rounded = roundHalfAwayFromZero(total);
  const lost = (exact || unit === 'piece') && !isWhole(total);
  if (lost || (rounded === 0n && total.over > 0n)) return err({ code: 'finer-than-the-book', at });
  return ok(amountOf(unit, rounded));
}

function measureOf(
  part: Part,
  howMany: number,
  wanted: StockUnit,
  bareUnit: StockMeasureName | undefined,
): Result<StockMeasure, QuantityError> {
  const assumed = wanted === 'piece' ? 'piece' : bareUnit;
  if (part.unit === '' && (howMany > 1 || !assumed)) return err({ code: 'needs-a-unit', at: part.unitAt });
  const measure = part.unit === '' && assumed ? stockMeasure(assumed) : stockMeasureSpelled(part.unit);
  if (!measure) return err({ code: 'unknown-unit', at: part.unitAt, written: part.unit });
  if (measure.unit === wanted) return ok(measure);
  return err({ code: 'unit-does-not-fit', at: part.unitAt, written: part.unit, wanted, found: measure.unit });
}

function countOf({ number, at }: Part, size: Ratio, commaGroups: boolean): Result<Ratio, QuantityError> {
  if (number.kind === 'fraction') {
    if (number.over >= number.under) return err({ code: 'improper-fraction', at });
    return ok(ratio(number.whole * number.under + number.over, number.under));
  }
  if (!number.ifGrouped) return ok(number.value);
  if (commaGroups) return ok(number.ifGrouped);
  const inSmallUnits = (count: Ratio) => roundHalfAwayFromZero(times(count, size));
  return err({
    code: 'two-readings',
    at,
    decimal: inSmallUnits(number.value),
    grouped: inSmallUnits(number.ifGrouped),
  });
}
