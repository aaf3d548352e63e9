import { decimalText } from '@/shared/units/decimal-text';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { milligrams } from '@/shared/units/stock-unit';
import type { Weighing } from '@/shared/units/used-by-weight';

/**
 * How an amount was found by weighing, for the book to keep: exact and metric, with the density where the volume was
 * computed by one. `weighed 2.41 kg before, 1.98 kg after, computed by density 1 100 g/L`.
 */
export function sayWeighing({ unit, beforeMg, afterMg, tareMg, densityGramsPerLitre }: Weighing): string {
  const exact = (mg: number) => printQuantityExact(milligrams(mg), 'mg');
  const before =
    beforeMg === undefined
      ? `not weighed before, container ${exact(tareMg ?? 0)}, weighed ${exact(afterMg)} after`
      : `weighed ${exact(beforeMg)} before, ${exact(afterMg)} after`;
  if (unit !== 'uL' || densityGramsPerLitre === null) return before;
  const density = decimalText(BigInt(densityGramsPerLitre), 0, 'grouped').replaceAll(',', ' ');
  return `${before}, computed by density ${density} g/L`;
}
