import type { AllocationAsk, AllocationContainer, AllocationNeed } from '@/shared/allocation/allocation-ask';
import { type BarToUse, barToUse } from '@/shared/allocation/bar-to-use';
import { batchesOf } from '@/shared/allocation/batches-of';
import { canAllBeHad } from '@/shared/allocation/can-all-be-had';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import { hangingTogether } from '@/shared/allocation/hanging-together';
import type { SolveProgram } from '@/shared/allocation/program';
import type { Life } from '@/shared/calendar/life';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What keeps a container of the right product from a need, or from several of them together. */
export type ConflictLimit = {
  readonly containerId: string;
  readonly needIds: readonly string[];
  readonly bar:
    | BarToUse
    | { readonly code: 'barred' | 'one-system' | 'one-set' }
    | { readonly code: 'opened-life'; readonly openedLife: Life };
};

type ConflictTotal = {
  readonly part: 'A' | 'B' | undefined;
  readonly unit: StockUnit;
  readonly wanted: number;
  readonly free: number;
};

/** Needs that cannot all be met together, though any of them left out lets the others be. */
export type Conflict = {
  readonly needIds: readonly string[];
  /** For each part and unit: what they want, and what is free in the containers that could serve one of them or more. */
  readonly totals: readonly ConflictTotal[];
  readonly limits: readonly ConflictLimit[];
  /** False when time ran out before every need of it was shown to be needed. */
  readonly isSmallest: boolean;
};

/**
 * For what cannot all be had: the needs that stand in each other's way, as few as will do, and the limits that make it so.
 * Needs are left out one at a time, the latest first, and stay out while the rest still cannot be met (the deletion filter
 * of Chinneck and Dravnieks, 1991): what remains conflicts, and each of it is needed for the conflict. One conflict for each
 * group of needs that hang together and are short; none where nothing is short.
 */
export async function findConflicts(
  ask: AllocationAsk,
  shortNeedIds: readonly string[],
  solve: SolveProgram,
  options: { readonly timeLimitSeconds: number },
): Promise<readonly Conflict[]> {
  const conflicts: Conflict[] = [];
  const seen = new Set<string>();
  for (const needId of shortNeedIds) {
    if (seen.has(needId)) continue;
    let { needs } = hangingTogether(ask, needId);
    for (const { id } of needs) seen.add(id);
    let isSmallest = true;
    if ((await canAllBeHad({ ...ask, needs }, solve, options)) !== 'no') continue;
    const latestFirst = [...needs].sort((a, b) => (a.on > b.on ? -1 : a.on < b.on ? 1 : 0));
    for (const one of latestFirst) {
      const rest = needs.filter((need) => need !== one);
      const can = rest.length ? await canAllBeHad({ ...ask, needs: rest }, solve, options) : 'yes';
      if (can === 'no') needs = rest;
      if (can === 'unknown') isSmallest = false;
    }
    conflicts.push({ ...factsOf(ask, needs), isSmallest });
  }
  return conflicts;
}

function factsOf(ask: AllocationAsk, needs: readonly AllocationNeed[]): Omit<Conflict, 'isSmallest'> {
  const batches = batchesOf(needs);
  const barOf = (at: number, need: AllocationNeed, container: AllocationContainer) =>
    barToUse(need, container, { today: ask.today, batch: batches.find((one) => one.needs.includes(at)) });
  const limits: ConflictLimit[] = [];
  const servers = new Map<string, Set<AllocationContainer>>();
  for (const container of ask.containers) {
    const { id: containerId, openedLife, sealed } = container;
    const barred = new Map<string, { bar: BarToUse | { code: 'barred' }; needIds: string[] }>();
    const servedAt: number[] = [];
    needs.forEach((need, at) => {
      const isBarred = ask.barred?.some((one) => one.needId === need.id && one.containerId === containerId);
      const bar = barOf(at, need, container) ?? (isBarred ? { code: 'barred' as const } : undefined);
      if (!bar) servedAt.push(at);
      else if (bar.code !== 'other-product') {
        const known = barred.get(bar.code) ?? { bar, needIds: [] };
        known.needIds.push(need.id);
        barred.set(bar.code, known);
      }
    });
    for (const { bar, needIds } of barred.values()) limits.push({ containerId, needIds, bar });
    if (servedAt.length === 0) continue;
    const served = servedAt.flatMap((at) => needs[at] ?? []);
    for (const need of served)
      servers.set(materialOf(need), (servers.get(materialOf(need)) ?? new Set()).add(container));
    const needIds = served.map(({ id }) => id);
    const days = new Set(served.map((need) => dayOfNeed(need, ask.today)));
    if (sealed && openedLife && days.size > 1)
      limits.push({ containerId, needIds, bar: { code: 'opened-life', openedLife } });
    for (const batch of batches) {
      const mixed = batch.needs.filter((at) => servedAt.includes(at));
      if (mixed.length === 0) continue;
      const ids = mixed.flatMap((at) => needs[at]?.id ?? []);
      limits.push({ containerId, needIds: ids, bar: { code: batch.setDemanded ? 'one-set' : 'one-system' } });
    }
  }
  const materials = new Map(needs.map((need) => [materialOf(need), need]));
  const totals = [...materials].map(([material, { part, unit }]): ConflictTotal => {
    const wanted = needs.reduce((sum, need) => sum + (materialOf(need) === material ? need.amount : 0), 0);
    const free = [...(servers.get(material) ?? [])].reduce((sum, container) => sum + freeOf(container), 0);
    return { part, unit, wanted, free };
  });
  return { needIds: needs.map(({ id }) => id), totals, limits };
}

function materialOf({ part, unit }: AllocationNeed): string {
  return JSON.stringify([part, unit]);
}
