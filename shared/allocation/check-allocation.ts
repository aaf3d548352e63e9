import type { AllocationAsk, AllocationContainer, AllocationNeed, Take } from '@/shared/allocation/allocation-ask';
import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type AllocationFault =
  | { readonly code: 'unknown-need' | 'not-whole' | 'over-met'; readonly needId: string }
  | { readonly code: 'unknown-container' | 'over-drawn'; readonly containerId: string }
  | { readonly code: 'mixed-systems' | 'mixed-sets'; readonly needId: string; readonly pairsWith: string }
  | {
      readonly code:
        | 'other-product'
        | 'other-part'
        | 'other-system'
        | 'held'
        | 'past-limit'
        | 'past-opened-life'
        | 'barred'
        | 'no-set';
      readonly needId: string;
      readonly containerId: string;
    };

/**
 * Every rule an allocation breaks; none when it may be followed. It is written from the rules alone and shares no code
 * with what makes allocations, so that the one proves the other: no unit twice, no need over-met, nothing past its limit
 * on the day it has to be good to or its opened life on the day of use, product, part, system and set as asked, nothing held, nothing barred.
 */
export function checkAllocation(ask: AllocationAsk, takes: readonly Take[]): readonly AllocationFault[] {
  const needs = new Map(ask.needs.map((need) => [need.id, need]));
  const containers = new Map(ask.containers.map((container) => [container.id, container]));
  const faults: AllocationFault[] = [];
  const known: {
    need: AllocationNeed;
    container: AllocationContainer;
    /** Of use, and the later one it has to be within its limit on. */
    day: CalendarDate;
    judged: CalendarDate;
    amount: number;
  }[] = [];
  for (const { needId, containerId, amount } of takes) {
    const [need, container] = [needs.get(needId), containers.get(containerId)];
    if (!need) faults.push({ code: 'unknown-need', needId });
    if (!container) faults.push({ code: 'unknown-container', containerId });
    if (!Number.isSafeInteger(amount) || amount < 1) faults.push({ code: 'not-whole', needId });
    if (need && container) {
      const day = laterOf(need.on, ask.today);
      known.push({ need, container, amount, day, judged: laterOf(need.goodTo ?? day, ask.today) });
    }
  }

  for (const need of needs.values()) {
    const sum = known.reduce((total, one) => total + (one.need === need ? one.amount : 0), 0);
    if (sum > need.amount) faults.push({ code: 'over-met', needId: need.id });
  }
  for (const container of containers.values()) {
    const uses = known.filter((one) => one.container === container);
    if (uses.length === 0) continue;
    const promised = (container.promisedTo ?? []).reduce((total, one) => total + one.amount, 0);
    const drawn = uses.reduce((total, one) => total + one.amount, promised);
    if (drawn > container.left) faults.push({ code: 'over-drawn', containerId: container.id });
    const [openedOn] = uses.map(({ day }) => day).sort();
    const end =
      openedOn && container.sealed && container.openedLife ? addLife(openedOn, container.openedLife) : undefined;
    for (const { need, day, judged } of uses) {
      const both = { needId: need.id, containerId: container.id };
      const { lastGoodDay } = container;
      if (lastGoodDay !== undefined && judged > lastGoodDay) faults.push({ code: 'past-limit', ...both });
      if (end !== undefined && day > end) faults.push({ code: 'past-opened-life', ...both });
    }
  }
  for (const { need, container } of known) {
    const both = { needId: need.id, containerId: container.id };
    if (!need.productIds.includes(container.productId) || need.unit !== container.unit)
      faults.push({ code: 'other-product', ...both });
    if (need.part !== undefined && need.part !== container.part) faults.push({ code: 'other-part', ...both });
    if (need.systemKey !== undefined && need.systemKey !== container.systemKey)
      faults.push({ code: 'other-system', ...both });
    if (container.held) faults.push({ code: 'held', ...both });
    if (ask.barred?.some((one) => one.needId === need.id && one.containerId === container.id))
      faults.push({ code: 'barred', ...both });
  }
  return [...faults, ...pairFaults(ask, known)];
}

function laterOf(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one < other ? other : one;
}

function pairFaults(
  { needs }: AllocationAsk,
  known: readonly { readonly need: AllocationNeed; readonly container: AllocationContainer }[],
): AllocationFault[] {
  const faults: AllocationFault[] = [];
  const seen = new Set<string>();
  for (const start of needs) {
    if (seen.has(start.id)) continue;
    // Everything that is mixed with this one, however long the chain of pairs and whichever of two names the other.
    const batch = new Set([start.id]);
    for (let grown = true; grown; ) {
      const more = needs.filter(
        ({ id, pairsWith }) =>
          (pairsWith !== undefined && batch.has(pairsWith) && !batch.has(id)) ||
          needs.some((other) => batch.has(other.id) && other.pairsWith === id && !batch.has(id)),
      );
      for (const { id } of more) batch.add(id);
      grown = more.length > 0;
    }
    for (const id of batch) seen.add(id);
    const uses = known.filter(({ need }) => batch.has(need.id));
    const other = [...batch].find((id) => id !== start.id) ?? start.id;
    const systems = new Set(uses.map(({ container }) => container.systemKey));
    if (batch.size > 1 && (systems.size > 1 || systems.has(undefined)))
      faults.push({ code: 'mixed-systems', needId: start.id, pairsWith: other });
    if (!needs.some(({ id, setDemanded }) => setDemanded && batch.has(id))) continue;
    const bare = uses.find(({ container }) => container.setId === undefined);
    if (bare) faults.push({ code: 'no-set', needId: bare.need.id, containerId: bare.container.id });
    else if (new Set(uses.map(({ container }) => JSON.stringify([container.systemKey, container.setId]))).size > 1)
      faults.push({ code: 'mixed-sets', needId: start.id, pairsWith: other });
  }
  return faults;
}
