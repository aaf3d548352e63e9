import { err, ok, type Result } from '@/shared/result/result';
import { type Explained, explained } from '@/shared/wood/explained';
import type { Species } from '@/shared/wood/species';

/** Moisture content above which wood neither shrinks nor swells, per cent. Wood Handbook, p. 4-2: about 30. */
export const FIBRE_SATURATION = 30;
/** No wood holds more; the same bound as for a typed reading. */
const MOST_MC = 250;
/** Fall of 1/G from green to ovendry where nothing of the species says it: the handbook's mean for all species. */
const MEAN_FALL = 0.265;

export type DensityOfWoodError =
  | { readonly code: 'unknown-specific-gravity' }
  | { readonly code: 'moisture-out-of-range'; readonly most: number };

/** 1/G of green wood and how far it falls to ovendry; undefined when no figure is published. */
function inverseLine(species: Species): { readonly green: number; readonly fall: number } | undefined {
  const green = species.gravityGreen?.value;
  const at12 = species.gravity12?.value;
  const drynessAt12 = (FIBRE_SATURATION - 12) / FIBRE_SATURATION;
  if (green && at12) return { green: 1 / green, fall: (1 / green - 1 / at12) / drynessAt12 };
  const shrinks = species.shrinkVolume && species.shrinkVolume.value / 100;
  if (green) return { green: 1 / green, fall: shrinks === null ? MEAN_FALL : shrinks / green };
  if (!at12) return undefined;
  if (shrinks === null) return { green: 1 / at12 + MEAN_FALL * drynessAt12, fall: MEAN_FALL };
  const greenInverse = 1 / (at12 * (1 - shrinks * drynessAt12));
  return { green: greenInverse, fall: shrinks * greenInverse };
}

/**
 * Specific gravity on the volume the wood has at `mc`: dry weight over that volume, against water. Below 30 % its inverse
 * is a straight line in MC, because the wood shrinks in proportion: through the published green and 12 % figures where
 * both are known; else from one of them with the species' own shrinkage by volume; else with the handbook's mean for all
 * species, G(M) = G_b / (1 − 0.265 a G_b), a = (30 − M)/30. A published figure comes back unchanged. Fails with
 * `unknown-specific-gravity` or `moisture-out-of-range` (0 to 250 %). Wood Handbook, Chapter 4. Black walnut at 12 % is
 * 0.55.
 */
export function specificGravityAt(species: Species, mc: number): Result<Explained<number>, DensityOfWoodError> {
  if (!(mc >= 0 && mc <= MOST_MC)) return err({ code: 'moisture-out-of-range', most: MOST_MC });
  const line = inverseLine(species);
  if (!line) return err({ code: 'unknown-specific-gravity' });
  const dryness = Math.max(0, FIBRE_SATURATION - mc) / FIBRE_SATURATION;
  const inputs = {
    species: species.id,
    mc,
    ...(species.gravityGreen && { green: species.gravityGreen.value, greenSource: species.gravityGreen.source }),
    ...(species.gravity12 && { at12: species.gravity12.value, at12Source: species.gravity12.source }),
  };
  return ok(explained(1 / (line.green - line.fall * dryness), 'specific-gravity', inputs));
}

/**
 * Density of wood in kg/m³ at a moisture content of 0 to 250 %: 1000 G (1 + M/100), with G on the volume at that MC.
 * Fails with `unknown-specific-gravity` or `moisture-out-of-range`. Wood Handbook, Chapter 4. Black walnut at 12 % is
 * 616 kg/m³.
 */
export function woodDensity(species: Species, mc: number): Result<Explained<number>, DensityOfWoodError> {
  const gravity = specificGravityAt(species, mc);
  if (!gravity.ok) return gravity;
  const inputs = { ...gravity.value.how.inputs, G: gravity.value.value };
  return ok(explained(densityFromGravity(gravity.value.value, mc), 'density', inputs));
}

/** Density in kg/m³ from a specific gravity on the volume at that MC. G 0.40 at 12 % is 448 kg/m³. */
export function densityFromGravity(gravity: number, mc: number): number {
  return 1000 * gravity * (1 + mc / 100);
}
