import type { AllocationAsk, AllocationContainer, Take } from '@/shared/allocation/allocation-ask';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { orderOfExpiry } from '@/shared/allocation/order-of-expiry';
import { surfacesOf } from '@/shared/allocation/surfaces-of';
import { unusedPastLimit } from '@/shared/allocation/unused-past-limit';
import { usedLots } from '@/shared/allocation/used-lots';
import { weighWasteBy } from '@/shared/allocation/weigh-waste-by';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What an allocation is judged by, in the order in which it counts; less is better in each. */
export type Measures = {
  /** What cannot be had, in small units, day by day; days without a shortage are left out. */
  readonly short: readonly { readonly on: CalendarDate; readonly amount: number }[];
  /** Surfaces that are of more than one lot, those counted that are on them already. */
  readonly splitSurfaces: number;
  /** How often the lot changes: over all surfaces, the lots beyond the first. */
  readonly lotChanges: number;
  /** What will pass its limit unused: small units, or, weighed by value, millionths of a minor unit of money. */
  readonly waste: number;
  readonly wasteBy: 'value' | 'amount';
  /** Sealed containers that are opened. */
  readonly opened: number;
  /** Taken amount times its container's place in the order of expiry: it is least when what expires first goes first. */
  readonly order: number;
};

/**
 * Measures an allocation from its takes alone. Waste is what `unusedPastLimit` finds. Throws on a take of what is not in
 * the ask.
 */
export function measureAllocation(ask: AllocationAsk, takes: readonly Take[]): Measures {
  const { needs, containers, today } = ask;
  const needAt = new Map(needs.map((need) => [need.id, need]));
  const containerAt = new Map(containers.map((one) => [one.id, one]));
  const rank = orderOfExpiry(containers);
  const got = new Map<string, number>();
  const used = new Set<AllocationContainer>();
  const lots = new Map<string, Set<string>>();
  for (const { needId, containerId, amount } of takes) {
    const [need, container] = [needAt.get(needId), containerAt.get(containerId)];
    if (!need || !container) throw new RangeError(`A take of what is not there: ${needId}, ${containerId}`);
    got.set(needId, (got.get(needId) ?? 0) + amount);
    used.add(container);
    lots.set(needId, (lots.get(needId) ?? new Set()).add(container.lotId));
  }

  const short = new Map<CalendarDate, number>();
  for (const need of needs) {
    const missing = need.amount - (got.get(need.id) ?? 0);
    const day = dayOfNeed(need, today);
    if (missing > 0) short.set(day, (short.get(day) ?? 0) + missing);
  }
  const lotsOfSurfaces = surfacesOf(needs).map(
    (members) =>
      new Set([...usedLots(ask, members), ...members.flatMap((nr) => [...(lots.get(needs[nr]?.id ?? '') ?? [])])]).size,
  );
  const wasteBy = weighWasteBy(ask);
  const waste = unusedPastLimit(ask, takes).reduce((sum, { containerId, amount }) => {
    return sum + amount * (wasteBy === 'value' ? (containerAt.get(containerId)?.price ?? 0) : 1);
  }, 0);
  return {
    short: [...short].sort(([a], [b]) => (a < b ? -1 : 1)).map(([on, amount]) => ({ on, amount })),
    splitSurfaces: lotsOfSurfaces.filter((count) => count > 1).length,
    lotChanges: lotsOfSurfaces.reduce((sum, count) => sum + Math.max(0, count - 1), 0),
    waste,
    wasteBy,
    opened: [...used].filter(({ sealed }) => sealed).length,
    order: takes.reduce((sum, { containerId, amount }) => sum + amount * (rank.get(containerId) ?? 0), 0),
  };
}
