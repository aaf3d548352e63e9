import { speciesById } from '@/shared/wood/all-species';

/** The species of that id, or a failed test. */
export function knownSpecies(id: string) {
  const found = speciesById(id);
  if (!found) throw new Error(`No species ${id}`);
  return found;
}
