import { decimalText } from '@/shared/units/decimal-text';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

const SIXTY_FOURTH = 396_875;

/**
 * The whole length to the nanometre, for a form that is edited again and for files. Where imperial is preferred and the
 * length falls on a sixty-fourth it is feet, inches and fractions; everything else is millimetres, ungrouped.
 * `parseLength` reads it back to the same length (zero and above). `printLengthExact(nanometres(44_450_000), 'metric')`
 * is `44.45 mm`, and `1 3/4"` for `'imperial'`.
 */
export function printLengthExact(length: Nanometres, prefer: UnitSystem): string {
  if (prefer === 'imperial' && length % SIXTY_FOURTH === 0) return printLength(length, { prefer, denominator: 64 });
  return `${decimalText(BigInt(length), 6)} mm`;
}
