import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A board of a tally, width first as it is tallied: `150 × 2,440 mm`, `6 1/4" × 8'`. To the sixty-fourth of an inch. */
export function sayBoardSize(
  board: { readonly width: Nanometres; readonly length: Nanometres },
  prefer: UnitSystem,
): string {
  const [width, length] = [board.width, board.length].map((nm) => printLength(nm, { prefer, denominator: 64 }));
  return `${width?.replace(/ mm$/, '')} × ${length}`;
}
