import type { AllocationNeed } from '@/shared/allocation/allocation-ask';
import { JoinedSets } from '@/shared/allocation/joined-sets';

/**
 * The needs, by their places in the list, that want one lot among them: those on one surface for one part, whose
 * acceptable products overlap, if only by way of a third. Part A and part B of a lift are of different lots by nature, and
 * so are resin and oil: each is a material of its own. A need alone is its own surface.
 */
export function surfacesOf(needs: readonly AllocationNeed[]): readonly (readonly number[])[] {
  const joined = new JoinedSets(needs.length);
  const first = new Map<string, number>();
  needs.forEach(({ surface, part, productIds }, nr) => {
    for (const product of productIds) {
      const key = JSON.stringify([surface, part, product]);
      const seen = first.get(key);
      if (seen === undefined) first.set(key, nr);
      else joined.join(seen, nr);
    }
  });
  return joined.all();
}
