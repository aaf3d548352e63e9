import { type Explained, explained } from '@/shared/wood/explained';
import type { Species } from '@/shared/wood/species';
import { speciesMeant } from '@/shared/wood/species-meant';

/** Specific gravity of the wall of a wood cell, as the handbook counts it. */
const CELL_WALL = 1.54;

/**
 * The most water a wood can hold, tenths of a per cent of its dry weight, rounded up: every cell full. `null` where no
 * specific gravity on green volume is published. M max = 100 (1.54 − G)/(1.54 G), Wood Handbook, Chapter 4. Black walnut,
 * 0.51, is full at 131.2 %.
 */
export function mostMoisture(species: Species): Explained<number> | null {
  const green = species.gravityGreen;
  if (!green) return null;
  const most = (CELL_WALL - green.value) / (CELL_WALL * green.value);
  return explained(Math.ceil(most * 1000), 'most-moisture', {
    species: species.id,
    green: green.value,
    greenSource: green.source,
  });
}

/** The same of the wood a word means, the fullest of those it can mean; `null` where one of them is not known. */
export function mostMoistureOfWord(word: string): number | null {
  const each = speciesMeant(word).exact.map(mostMoisture);
  const known = each.flatMap((most) => most?.value ?? []);
  return known.length === 0 || known.length < each.length ? null : Math.max(...known);
}
