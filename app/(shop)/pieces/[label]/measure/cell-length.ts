import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * A length as a narrow field holds it, exact: a number alone is millimetres in a metric book and inches in another.
 * 1200 mm is `1200`, 8 ft is `96`; what no sixty-fourth of an inch says is `1200 mm`.
 */
export function cellLength(length: Nanometres, prefer: UnitSystem): string {
  const exact = printLengthExact(length, prefer);
  if (prefer === 'metric') return exact.replace(/ mm$/, '');
  if (exact.endsWith('mm')) return exact;
  return printLength(length, { prefer, style: 'inches', denominator: 64 }).replace(/ in$/, '').replaceAll(',', '');
}
