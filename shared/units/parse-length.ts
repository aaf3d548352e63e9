import { err, ok, type Result } from '@/shared/result/result';
import { type LengthMeasure, lengthMeasure, lengthMeasureSpelled } from '@/shared/units/length-measures';
import { LONGEST } from '@/shared/units/limits';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { firstPartOutOfLine, type MeasuredPart } from '@/shared/units/parts-follow';
import { isForgottenSpace, isSoldInQuarters, quartersToLength } from '@/shared/units/quarters';
import { compareRatios, isWhole, plus, type Ratio, ratio, times } from '@/shared/units/ratio';
import { type Part, type ReadError, readParts } from '@/shared/units/read-parts';
import { roundDown } from '@/shared/units/round-ratio';
import type { UnitSystem } from '@/shared/units/unit-system';

export type LengthError =
  | ReadError
  | { readonly code: 'needs-a-unit'; readonly at: number }
  | { readonly code: 'unknown-unit'; readonly at: number; readonly written: string }
  /** `1,250 m` is 1.25 m to one maker and 1250 m to another; both readings are in nanometres. */
  | { readonly code: 'two-readings'; readonly at: number; readonly decimal: bigint; readonly grouped: bigint }
  /** `61/2"` was meant as `6 1/2"`; `8/4` is a thickness, and this is none. */
  | { readonly code: 'improper-fraction'; readonly at: number }
  /** `9/4` as a thickness: lumber is sold in the quarters next below and above it. */
  | { readonly code: 'not-sold-in-quarters'; readonly at: number; readonly quarters: bigint }
  /** Not in halves, quarters, … sixty-fourths: no rule is marked so. */
  | { readonly code: 'fraction-not-on-the-rule'; readonly at: number }
  | { readonly code: 'parts-do-not-follow'; readonly at: number }
  | { readonly code: 'finer-than-the-book'; readonly at: number }
  | { readonly code: 'absurd'; readonly at: number; readonly most: Nanometres };

export type LengthReading = {
  readonly prefer: UnitSystem;
  /** In `thickness` a lone `n/4` is the nominal thickness lumber is sold in: `8/4` is two inches. */
  readonly mode?: 'length' | 'thickness';
};

/**
 * Reads a length as a maker writes it, exactly, into whole nanometres: `1 3/4`, `1-3/4"`, `5' 6 1/2"`, `5'-6 1/2"`, `5
 * ft 6 1/2 in`, `66.5"`, `½"`, `2.5 m`, `60 cm`, `1830mm`, `1,690 mm`, `600`; primes and smart quotes as well. Nothing
 * is ever rounded: an inch is 25.4 mm (1959 agreement), 1/64 in is 396 875 nm, and what is finer than a nanometre is
 * refused. A bare fraction is inches, a bare number is inches or millimetres as preferred, a bare number after feet is
 * inches. A comma before three digits groups thousands in millimetres and where imperial is preferred, else it is
 * `two-readings`. Inches after feet stay below 12. Zero is allowed; at most 100 m. Never throws; `at` counts characters
 * from the start. `parseLength('5\' 6 1/2"', { prefer: 'imperial' })` is 1 689 100 000 nm.
 */
export function parseLength(text: string, { prefer, mode = 'length' }: LengthReading): Result<Nanometres, LengthError> {
  const read = readParts(text);
  if (!read.ok) return read;
  const parts = read.value;
  const quarters = mode === 'thickness' ? quartersIn(parts) : undefined;
  if (quarters !== undefined) {
    return isSoldInQuarters(quarters)
      ? ok(quartersToLength(quarters))
      : err({ code: 'not-sold-in-quarters', at: parts[0]?.at ?? 0, quarters });
  }
  const measured: MeasuredPart[] = [];
  for (const [index, part] of parts.entries()) {
    const before = parts[index - 1];
    const afterFeet = before !== undefined && lengthMeasureSpelled(before.unit)?.name === 'ft';
    if (part.hyphenAt !== undefined && !afterFeet) return err({ code: 'not-a-number', at: part.hyphenAt });
    const measure = part.unit ? lengthMeasureSpelled(part.unit) : impliedMeasure(part, parts.length, afterFeet, prefer);
    if (!measure && part.unit) return err({ code: 'unknown-unit', at: part.unitAt, written: part.unit });
    if (!measure) return err({ code: 'needs-a-unit', at: part.unitAt });
    const count = countOf(part, measure, prefer);
    if (!count.ok) return count;
    measured.push({ count: count.value, size: ratio(measure.size), system: measure.system });
  }
  const outOfLine = firstPartOutOfLine(measured);
  if (outOfLine !== undefined) return err({ code: 'parts-do-not-follow', at: parts[outOfLine]?.at ?? 0 });

  const at = parts[0]?.at ?? 0;
  const total = measured.reduce((sum, { count, size }) => plus(sum, times(count, size)), ratio(0n));
  if (compareRatios(total, ratio(BigInt(LONGEST))) > 0) return err({ code: 'absurd', at, most: LONGEST });
  if (!isWhole(total)) return err({ code: 'finer-than-the-book', at });
  return ok(nanometres(roundDown(total)));
}

function quartersIn(parts: readonly Part[]): bigint | undefined {
  const [only, more] = parts;
  if (!only || more || only.number.kind !== 'fraction') return undefined;
  const { whole, over, under } = only.number;
  const bare = only.unit === '' || lengthMeasureSpelled(only.unit)?.name === 'in';
  return bare && whole === 0n && under === 4n && over >= 4n && !isForgottenSpace(over) ? over : undefined;
}

function impliedMeasure(
  part: Part,
  howMany: number,
  afterFeet: boolean,
  prefer: UnitSystem,
): LengthMeasure | undefined {
  if (afterFeet) return lengthMeasure('in');
  if (howMany > 1) return undefined;
  return lengthMeasure(part.number.kind === 'fraction' || prefer === 'imperial' ? 'in' : 'mm');
}

function countOf({ number, at }: Part, measure: LengthMeasure, prefer: UnitSystem): Result<Ratio, LengthError> {
  if (number.kind === 'fraction') {
    const { whole, over, under } = number;
    if (over >= under) return err({ code: 'improper-fraction', at });
    if (under > 64n || 64n % under !== 0n) return err({ code: 'fraction-not-on-the-rule', at });
    return ok(ratio(whole * under + over, under));
  }
  if (!number.ifGrouped) return ok(number.value);
  if (measure.name === 'mm' || prefer === 'imperial') return ok(number.ifGrouped);
  const inNanometres = (count: Ratio) => roundDown(times(count, ratio(measure.size)));
  return err({
    code: 'two-readings',
    at,
    decimal: inNanometres(number.value),
    grouped: inNanometres(number.ifGrouped),
  });
}
