import type { StoodNeeds } from '@/app/_server/needs/stand-needs';
import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { inKeptUnit } from '@/shared/promise/in-kept-unit';

/** So much of a container for a need, in the unit the container is kept in: what a press promises. */
export type TakenItem = { label: string; amount: number; needId: number };

/**
 * The takes of an allocation as they are promised, by job. What comes out of one container for all jobs together is never
 * more than is free in it, however the amounts round: what is shown can be promised.
 */
export function itemsOfTakes(
  { ask, stood }: { ask: AllocationAsk; stood: StoodNeeds },
  takes: readonly Take[],
): ReadonlyMap<number, readonly TakenItem[]> {
  const units = new Map(ask.containers.map(({ id, unit }) => [id, unit]));
  const jobOf = new Map(stood.needs.map(({ need }) => [need.id, need.jobId]));
  const byJob = new Map<number, TakenItem[]>();
  for (const { stockId, label, left, unit: to, density, promised } of stood.stock) {
    const from = units.get(String(stockId));
    const own = takes.filter(({ containerId }) => containerId === String(stockId));
    if (from === undefined || own.length === 0) continue;
    const free = promised.reduce((rest, { amount }) => rest - amount, left);
    const amounts = inKeptUnit(
      own.map(({ amount }) => amount),
      { from, to, density, free },
    );
    for (const [nr, { needId }] of own.entries()) {
      const amount = amounts?.[nr] ?? 0;
      const jobId = jobOf.get(Number(needId));
      if (jobId === undefined || amount === 0) continue;
      byJob.set(jobId, [...(byJob.get(jobId) ?? []), { label, amount, needId: Number(needId) }]);
    }
  }
  return byJob;
}
