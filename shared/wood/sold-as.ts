import type { Nanometres } from '@/shared/units/nanometres';
import { QUARTER_THICKNESSES } from '@/shared/wood/quarter-thickness';

/** The thinnest a board is counted as, in quarters of an inch: below 4/4 counts as 4/4. */
const LEAST = 4;

/**
 * The quarters of an inch a board of that thickness is commonly sold as: the thickest traded size it still holds, rough
 * or surfaced two sides, and 4/4 at least. Published sizes of `quarterThickness`; which of them a board that lies
 * between two is called is common practice. 1 3/4 in is 8/4 where it is surfaced, and 7/4 where it is rough.
 */
export function soldAs(thickness: Nanometres, isSurfaced = false): number {
  const held = QUARTER_THICKNESSES.filter(
    ({ rough, surfacedTwo }) => (isSurfaced ? surfacedTwo : rough) <= thickness,
  ).at(-1);
  return Math.max(LEAST, held?.quarters ?? LEAST);
}
