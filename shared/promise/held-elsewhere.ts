import { inUnit } from '@/shared/promise/in-unit';
import type { MaterialNeed, NeedStanding, OnHand } from '@/shared/promise/material-need';

/** What other jobs are promised of containers that would serve a need, in its unit, each job with the first of them. */
export function heldElsewhere(
  { jobId: own, unit }: Pick<MaterialNeed, 'jobId' | 'unit'>,
  containers: readonly OnHand[],
): NeedStanding['elsewhere'] {
  const held = new Map<number, { amount: number; stockId: number }>();
  for (const container of containers) {
    for (const { jobId, amount } of container.promised) {
      const counts = inUnit(amount, container.unit, unit, container.density, 'down') ?? 0;
      if (jobId === own || counts === 0) continue;
      const known = held.get(jobId) ?? { amount: 0, stockId: container.stockId };
      held.set(jobId, { ...known, amount: known.amount + counts });
    }
  }
  return [...held].map(([jobId, each]) => ({ jobId, ...each }));
}
