import { COVERAGE_TENTHS } from '@/shared/finish/finish-sheet';
import { err, ok, type Result } from '@/shared/result/result';
import { readDecimal } from '@/shared/units/read-decimal';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A square foot a US gallon, in square metres a litre: 0.09290304 m² over 3.785411784 L. */
const PER_GALLON = 0.09290304 / 3.785411784;

/**
 * How far a litre goes, as a sheet says it: m² a litre in a metric book, ft² a US gallon in an imperial one, in tenths of a
 * square metre a litre. From 0.5 to 100 m² a litre. `readCoverage('12.5', …)` in metric is 125; `'500'` in imperial is 123.
 */
export function readCoverage(
  text: string,
  { prefer }: { readonly prefer: UnitSystem },
): Result<number, { readonly code: 'empty' | 'not-a-number' | 'outside-range' }> {
  if (text.trim() === '') return err({ code: 'empty' });
  const number = readDecimal(text.trim());
  if (!number) return err({ code: 'not-a-number' });
  const value = Number(`${number.whole}.${number.fraction || '0'}`);
  const tenths = Math.round((prefer === 'metric' ? value : value * PER_GALLON) * 10);
  return tenths >= COVERAGE_TENTHS.least && tenths <= COVERAGE_TENTHS.most
    ? ok(tenths)
    : err({ code: 'outside-range' });
}

/** The coverage in the book's unit, as a field takes it. `typedCoverage(125, …)` in metric is `12.5`. */
export function typedCoverage(tenths: number, { prefer }: { readonly prefer: UnitSystem }): string {
  return prefer === 'metric' ? String(tenths / 10) : String(Math.round(tenths / 10 / PER_GALLON));
}

/** The coverage in words: `12.5 m² a litre`, `509 ft² a gallon`. */
export function sayCoverage(tenths: number, { prefer }: { readonly prefer: UnitSystem }): string {
  return `${typedCoverage(tenths, { prefer })} ${prefer === 'metric' ? 'm² a litre' : 'ft² a gallon'}`;
}
