import type { MaterialNeed } from '@/shared/promise/material-need';

type OfSurface = Pick<MaterialNeed, 'id' | 'jobId' | 'productIds' | 'surface' | 'lotsUsed'>;

/** What the needs of one material on one visible surface have in common; a need of no surface in particular is alone. */
export function surfaceOf({ id, jobId, productIds, surface }: OfSurface): string {
  return surface === '' ? `need ${id}` : `${jobId}/${surface}/${[...productIds].sort().join()}`;
}

/**
 * The lots that every surface has already, the one to go on with first: what was taken for it, the newest before the older,
 * then what is promised to it, in the order the needs are given. One that has none is left out.
 *
 * Example: lift 1 is poured of lot X, lift 3 is promised lot Y, lift 2 nothing yet → X, Y for all three.
 */
export function lotsOnSurfaces(
  needs: readonly { readonly need: OfSurface; readonly lots: readonly string[] }[],
): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const add = (need: OfSurface, lots: readonly string[]) => {
    const known = found.get(surfaceOf(need)) ?? [];
    if (lots.length > 0) found.set(surfaceOf(need), [...new Set([...known, ...lots])]);
  };
  // The last need that something was taken for is the newest layer.
  for (const { need } of [...needs].reverse()) add(need, [...(need.lotsUsed ?? [])].reverse());
  for (const { need, lots } of needs) add(need, lots);
  return found;
}
