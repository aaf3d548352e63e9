import type { AllocationNeed } from '@/shared/allocation/allocation-ask';
import { JoinedSets } from '@/shared/allocation/joined-sets';

/** Needs that are mixed together, and whether they must be of one set. A need by itself is a batch only when it demands one. */
export type Batch = { readonly needs: readonly number[]; readonly setDemanded: boolean };

/** The batches among the needs, by their places in the list: whatever `pairsWith` joins, and each alone that demands a set. */
export function batchesOf(needs: readonly AllocationNeed[]): readonly Batch[] {
  const at = new Map(needs.map(({ id }, nr) => [id, nr]));
  const joined = new JoinedSets(needs.length);
  needs.forEach(({ pairsWith }, nr) => {
    const other = pairsWith === undefined ? undefined : at.get(pairsWith);
    if (other !== undefined) joined.join(nr, other);
  });
  return joined
    .all()
    .map((members) => ({ needs: members, setDemanded: members.some((nr) => needs[nr]?.setDemanded) }))
    .filter((batch) => batch.needs.length > 1 || batch.setDemanded);
}
