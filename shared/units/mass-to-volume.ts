import type { GramsPerLitre } from '@/shared/units/density';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import { type Microlitres, type Milligrams, microlitres } from '@/shared/units/stock-unit';

/** An amount that was not measured but computed from another by a density, so that a screen can say so. */
type ByDensity<Amount> = { readonly amount: Amount; readonly computed: true; readonly by: 'density' };

/**
 * The volume of a mass, V = m / ρ, to the nearest microlitre. Throws past the safe integers, which no stock within the
 * container limit can reach. `massToVolume(milligrams(1_100_000), density)` at 1100 g/L is 1 000 000 µL, one litre.
 */
export function massToVolume(mass: Milligrams, density: GramsPerLitre): ByDensity<Microlitres> {
  // A gram per litre is a milligram per 1000 µL.
  const volume = roundHalfAwayFromZero(ratio(BigInt(mass) * 1000n, BigInt(density)));
  return { amount: microlitres(volume), computed: true, by: 'density' };
}
