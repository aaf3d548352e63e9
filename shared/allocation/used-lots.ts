import type { AllocationAsk } from '@/shared/allocation/allocation-ask';

/** The lots that the needs at some places of the list, all of one surface, have on it already; each once. */
export function usedLots(
  { needs, used = [] }: Pick<AllocationAsk, 'needs' | 'used'>,
  members: readonly number[],
): readonly string[] {
  const ofSurface = members.flatMap((at) => needs[at] ?? []);
  const lots = used.flatMap(({ surface, part, productId, lotId }) =>
    ofSurface.some((need) => need.surface === surface && need.part === part && need.productIds.includes(productId))
      ? [lotId]
      : [],
  );
  return [...new Set(lots)];
}
