import { ok, type Result } from '@/shared/result/result';
import { type Explained, explained } from '@/shared/wood/explained';
import type { Species } from '@/shared/wood/species';
import { type DensityOfWoodError, woodDensity } from '@/shared/wood/wood-density';

/**
 * Mass in kilograms of a volume in cubic metres, measured at the moisture content it is given for. Errors as
 * `woodDensity`; a volume below zero throws. A cubic metre of black walnut at 12 % is 616 kg.
 */
export function woodMass(
  species: Species,
  cubicMetres: number,
  mc: number,
): Result<Explained<number>, DensityOfWoodError> {
  if (!(cubicMetres >= 0)) throw new RangeError(`A volume is never below zero: ${cubicMetres}`);
  const density = woodDensity(species, mc);
  if (!density.ok) return density;
  const inputs = { ...density.value.how.inputs, densityKgPerM3: density.value.value, cubicMetres };
  return ok(explained(density.value.value * cubicMetres, 'mass', inputs));
}
