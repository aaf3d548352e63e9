import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';

/**
 * The price of an amount at what a package of a size costs, to the nearest minor unit. Amounts in the same small unit, the
 * size above 0. 0.8 kg at 49.50 for 2.5 kg is 15.84.
 */
export function shareOfPrice(amount: number, { paid, size }: { paid: MinorUnits; size: number }): MinorUnits {
  return minorUnits(roundHalfAwayFromZero(ratio(BigInt(paid) * BigInt(amount), BigInt(size))));
}
