import type { AllocationAsk, AllocationContainer } from '@/shared/allocation/allocation-ask';
import { barToUse } from '@/shared/allocation/bar-to-use';
import { batchesOf } from '@/shared/allocation/batches-of';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import { JoinedSets } from '@/shared/allocation/joined-sets';
import { openingDays } from '@/shared/allocation/opening-days';
import { orderOfExpiry } from '@/shared/allocation/order-of-expiry';
import { choiceOf, type Group, type Problem, type ProblemNeed, type Slot } from '@/shared/allocation/problem';
import { surfacesOf } from '@/shared/allocation/surfaces-of';
import { usedLots } from '@/shared/allocation/used-lots';
import { weighWasteBy } from '@/shared/allocation/weigh-waste-by';

/** Amounts of a programme are at most this many units. */
const MOST_IN_UNITS = 8192;

/**
 * Takes an ask apart into problems that have nothing in common: no container both could draw from, no batch, no surface.
 * Every measure is a sum over them, so the best of each together are the best of all. Pairs that cannot be are left out,
 * containers that differ in their labels alone become one group, and a sealed group becomes a slot for each day on which
 * opening it could be best. A need that nothing can serve
 * is in no problem: all of it is short.
 */
export function layOutProblems(ask: AllocationAsk): readonly Problem[] {
  const { needs, today } = ask;
  const batches = batchesOf(needs);
  const surfaces = surfacesOf(needs);
  const batchAt = new Map(batches.flatMap(({ needs: members }, nr) => members.map((at) => [at, nr])));
  const surfaceAt = new Map(surfaces.flatMap((members, nr) => members.map((at) => [at, nr])));
  const barred = new Set((ask.barred ?? []).map(({ needId, containerId }) => JSON.stringify([needId, containerId])));
  const mayTake = ask.containers.map((container) =>
    [...needs.keys()].filter((at) => {
      const need = needs[at];
      if (!need || barred.has(JSON.stringify([need.id, container.id]))) return false;
      const batch = batches[batchAt.get(at) ?? -1];
      return !barToUse(need, container, { today, batch });
    }),
  );

  const usable = needs.map((_, at) => ask.containers.filter((_, nr) => mayTake[nr]?.includes(at)));
  const canDiffer = (
    members: readonly number[],
    by: (container: AllocationContainer) => string,
    already: readonly string[] = [],
  ) => new Set([...already, ...members.flatMap((at) => (usable[at] ?? []).map(by))]).size > 1;
  const joined = new JoinedSets(needs.length);
  for (const members of [
    ...mayTake,
    // Needs that have to agree on something bind each other only where there is more than one thing to agree on.
    ...surfaces.filter((one) => canDiffer(one, ({ lotId }) => lotId, usedLots(ask, one))),
    ...batches
      .filter(({ needs: mixed, setDemanded }) =>
        canDiffer(mixed, ({ systemKey, setId }) => JSON.stringify([systemKey, setDemanded ? setId : undefined])),
      )
      .map((one) => one.needs),
  ]) {
    for (const at of members) joined.join(members[0] ?? at, at);
  }
  const ranks = orderOfExpiry(ask.containers);
  const byValue = weighWasteBy(ask) === 'value';
  const alike = groupAlike(ask.containers, mayTake);
  const served = new Set(mayTake.flat());
  return joined.all().flatMap((all) => {
    const members = all.filter((at) => served.has(at));
    const groupsHere = alike.filter((group) => group.needs.some((at) => joined.of(at) === joined.of(members[0] ?? -1)));
    if (groupsHere.length === 0) return [];
    const place = new Map(members.map((at, nr) => [at, nr]));
    const slots: Slot[] = [];
    const groups = groupsHere.map(({ containers, needs: drawing }, nr): Group => {
      const [first] = containers;
      if (!first) throw new Error('A group has a container.');
      const days = drawing.map((at) => ({ at, day: dayOf(at) }));
      const from = slots.length;
      for (const { until, needs: within } of openingDays(first, days, ask.wasteUntil)) {
        slots.push({
          group: nr,
          needs: within.map((at) => place.get(at) ?? 0),
          wasted: until !== undefined && until <= ask.wasteUntil,
          systemOfIt: JSON.stringify([first.systemKey]),
          setOfIt: JSON.stringify([first.systemKey, first.setId]),
        });
      }
      return {
        containers,
        sealed: first.sealed,
        each: freeOf(first),
        weight: byValue ? (first.price ?? 0) : 1,
        wastedShut: first.lastGoodDay !== undefined && first.lastGoodDay <= ask.wasteUntil,
        rank: ranks.get(first.id) ?? 0,
        lot: first.lotId,
        product: first.productId,
        slots: slots.map((_, at) => at).slice(from),
      };
    });
    return [assemble(members, groups, slots)];
  });

  function dayOf(at: number) {
    const need = needs[at];
    if (!need) throw new Error('A need has its place.');
    return dayOfNeed(need, today);
  }

  function assemble(members: readonly number[], groups: readonly Group[], slots: readonly Slot[]): Problem {
    const batchHere = [...new Set(members.flatMap((at) => batchAt.get(at) ?? []))];
    const surfaceHere = [...new Set(members.flatMap((at) => surfaceAt.get(at) ?? []))];
    const inProblem = members.map((at, nr): ProblemNeed => {
      const need = needs[at];
      if (!need) throw new Error('A need has its place.');
      const batch = batchHere.indexOf(batchAt.get(at) ?? -1);
      return {
        need,
        day: dayOf(at),
        surface: surfaceHere.indexOf(surfaceAt.get(at) ?? -1),
        batch: batch < 0 ? undefined : batch,
        slots: [...slots.keys()].filter((slot) => slots[slot]?.needs.includes(nr)),
      };
    });
    const reached = (of: (need: ProblemNeed) => boolean) =>
      inProblem.filter(of).flatMap((need) => need.slots.flatMap((slot) => slots[slot] ?? []));
    const amounts = [...inProblem.map(({ need }) => need.amount), ...groups.map(({ each }) => each)];
    const step = amounts.reduce((measure, amount) => commonMeasure(measure, amount), 0);
    const weightStep = groups.reduce((measure, { weight }) => commonMeasure(measure, weight), 0) || 1;
    return {
      needs: inProblem,
      groups: groups.map((group) => ({ ...group, weight: group.weight / weightStep })),
      slots,
      batches: batchHere.map((batch, nr) => {
        const setDemanded = batches[batch]?.setDemanded ?? false;
        const choices = reached((need) => need.batch === nr).map((slot) => choiceOf(slot, { setDemanded }));
        return { setDemanded, choices: [...new Set(choices)] };
      }),
      surfaces: surfaceHere.map((at, nr) => {
        const used = usedLots(ask, surfaces[at] ?? []);
        const choices = reached((need) => need.surface === nr).map((slot) => groups[slot.group]?.lot ?? '');
        return { lots: [...new Set([...used, ...choices])], used };
      }),
      step,
      unit: step * 2 ** Math.max(0, Math.ceil(Math.log2(Math.max(...amounts) / step / MOST_IN_UNITS))),
      weightStep,
    };
  }
}

/** Containers that serve some need, those alike together, in the order of their labels. */
function groupAlike(containers: readonly AllocationContainer[], mayTake: readonly (readonly number[])[]) {
  const alike = new Map<string, { containers: AllocationContainer[]; needs: readonly number[] }>();
  containers.forEach((one, nr) => {
    const needs = mayTake[nr] ?? [];
    if (needs.length === 0) return;
    // An open container is a choice of its own already: together they would have to be told apart again.
    const key = JSON.stringify(
      one.sealed
        ? [
            one.productId,
            one.lotId,
            one.systemKey,
            one.setId,
            freeOf(one),
            one.lastGoodDay,
            one.openedLife,
            one.price,
            needs,
          ]
        : [one.id],
    );
    const group = alike.get(key);
    if (group) group.containers.push(one);
    else alike.set(key, { containers: [one], needs });
  });
  const byLabel = (a: AllocationContainer, b: AllocationContainer) =>
    a.label < b.label ? -1 : a.label > b.label ? 1 : a.id < b.id ? -1 : 1;
  for (const group of alike.values()) group.containers.sort(byLabel);
  return [...alike.values()];
}

function commonMeasure(a: number, b: number): number {
  return b === 0 ? a : commonMeasure(b, a % b);
}
