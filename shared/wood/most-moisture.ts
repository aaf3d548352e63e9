import { type Explained, explained } from '@/shared/wood/explained';
import type { Species } from '@/shared/wood/species';
import { speciesMeant } from '@/shared/wood/species-meant';
import { FIBRE_SATURATION, specificGravityAt } from '@/shared/wood/wood-density';

/** Specific gravity of the wall of a wood cell, as the handbook counts it. */
const CELL_WALL = 1.54;

/**
 * The most water a wood can hold, tenths of a per cent of its dry weight, rounded up: every cell full. G is that on green
 * volume, published or else by way of the figure at 12 % (`specificGravityAt`); `null` where neither is known. M max =
 * 100 (1.54 − G)/(1.54 G), Wood Handbook, Chapter 4. Black walnut, 0.51, is full at 131.2 %.
 */
export function mostMoisture(species: Species): Explained<number> | null {
  const gravity = specificGravityAt(species, FIBRE_SATURATION);
  if (!gravity.ok) return null;
  const G = gravity.value.value;
  const most = (CELL_WALL - G) / (CELL_WALL * G);
  return explained(Math.ceil(most * 1000 - 1e-6), 'most-moisture', { ...gravity.value.how.inputs, G });
}

/** The same of the wood a word means, the fullest of those it can mean; `null` where one of them is not known. */
export function mostMoistureOfWord(word: string): number | null {
  const each = speciesMeant(word).exact.map(mostMoisture);
  const known = each.flatMap((most) => most?.value ?? []);
  return known.length === 0 || known.length < each.length ? null : Math.max(...known);
}
