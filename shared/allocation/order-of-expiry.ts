import type { AllocationContainer } from '@/shared/allocation/allocation-ask';

/** The place of each container among the last good days: 0 for the earliest day, the same for the same day, those that keep last. */
export function orderOfExpiry(containers: readonly AllocationContainer[]): ReadonlyMap<string, number> {
  const days = [...new Set(containers.map(({ lastGoodDay }) => lastGoodDay ?? '9999'))].sort();
  const rank = new Map(days.map((day, nr) => [day, nr]));
  return new Map(containers.map(({ id, lastGoodDay }) => [id, rank.get(lastGoodDay ?? '9999') ?? 0]));
}
