import type { Nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';

const INCH = 25_400_000n;
const FOOT = 12n * INCH;

/** What an exact half foot of surface measure becomes. A tally turns them up and down in turn. */
export type HalfGoes = 'up' | 'down';

/**
 * Surface measure of one board: its full width, fractions of an inch kept, times its length in whole feet (a part of a
 * foot is dropped), over 12, to the nearest whole square foot; an exact half goes up unless told. `exactHalf` tells a
 * tally that it was one. Computed without rounding before the end. NHLA rules as the American Hardwood Export Council
 * states them. 6 1/4 in by 8 ft is 4.
 */
export function surfaceMeasure(
  width: Nanometres,
  length: Nanometres,
  halfGoes: HalfGoes = 'up',
): Explained<number> & { readonly exactHalf: boolean } {
  if (width < 0 || length < 0) throw new RangeError('A board is never below zero wide or long');
  const feet = BigInt(length) / FOOT;
  // In twelfths of a square foot of inch width, so that halves can be told exactly.
  const over = BigInt(width) * feet;
  const under = 12n * INCH;
  const whole = over / under;
  const twiceRest = 2n * (over % under);
  const exactHalf = twiceRest === under;
  const up = exactHalf ? halfGoes === 'up' : twiceRest > under;
  return {
    ...explained(Number(whole + (up ? 1n : 0n)), 'surface-measure', {
      widthInches: Number(width) / Number(INCH),
      wholeFeet: Number(feet),
    }),
    exactHalf,
  };
}
