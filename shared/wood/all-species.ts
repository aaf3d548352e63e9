import { type Species, speciesFromRow } from '@/shared/wood/species';
import { DOMESTIC_HARDWOODS } from '@/shared/wood/species-domestic-hardwoods';
import { DOMESTIC_SOFTWOODS } from '@/shared/wood/species-domestic-softwoods';
import { EUROPEAN_HARDWOODS, EUROPEAN_SOFTWOODS } from '@/shared/wood/species-european';
import { IMPORTED_HARDWOODS } from '@/shared/wood/species-imported';

/** Every species the book knows, in the order of their names. Each figure carries its source; `null` is unknown. */
export const ALL_SPECIES: readonly Species[] = [
  ...[...DOMESTIC_HARDWOODS, ...IMPORTED_HARDWOODS, ...EUROPEAN_HARDWOODS].map((row) =>
    speciesFromRow('hardwood', row),
  ),
  ...[...DOMESTIC_SOFTWOODS, ...EUROPEAN_SOFTWOODS].map((row) => speciesFromRow('softwood', row)),
].sort((a, b) => (a.name < b.name ? -1 : 1));

const BY_ID: ReadonlyMap<string, Species> = new Map(ALL_SPECIES.map((each) => [each.id, each]));

/** The species of that id; undefined for one the book does not know. `speciesById('black-walnut')`. */
export function speciesById(id: string): Species | undefined {
  return BY_ID.get(id);
}
