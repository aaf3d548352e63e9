import type { GramsPerLitre } from '@/shared/units/density';
import type { ByDensity } from '@/shared/units/mass-to-volume';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import { type Microlitres, type Milligrams, milligrams } from '@/shared/units/stock-unit';

/**
 * The mass of a volume, m = ρ V, to the nearest milligram. Throws past the safe integers, which no stock within the
 * container limit can reach. `volumeToMass(microlitres(500_000), density)` at 1100 g/L is 550 000 mg.
 */
export function volumeToMass(volume: Microlitres, density: GramsPerLitre): ByDensity<Milligrams> {
  const mass = roundHalfAwayFromZero(ratio(BigInt(volume) * BigInt(density), 1000n));
  return { amount: milligrams(mass), computed: true, by: 'density' };
}
