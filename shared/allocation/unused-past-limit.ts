import type { AllocationAsk, StockAmount, Take } from '@/shared/allocation/allocation-ask';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import { goodUntil } from '@/shared/allocation/good-until';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What of a container is free, taken by nobody, and past its limit after `lastGoodDay`. */
export type Unused = {
  readonly containerId: string;
  readonly amount: StockAmount;
  readonly lastGoodDay: CalendarDate;
};

/**
 * The stock that will pass its limit unused on `wasteUntil` or before, container by container. Where the takes open a
 * sealed one, its opened life counts from its first use. Held stock and stock past its limit today are left out: no
 * allocation could save them.
 */
export function unusedPastLimit(ask: AllocationAsk, takes: readonly Take[]): readonly Unused[] {
  const days = new Map(ask.needs.map((need) => [need.id, dayOfNeed(need, ask.today)]));
  const taken = new Map<string, number>();
  const firstUse = new Map<string, CalendarDate>();
  for (const { needId, containerId, amount } of takes) {
    taken.set(containerId, (taken.get(containerId) ?? 0) + amount);
    const [day, first] = [days.get(needId), firstUse.get(containerId)];
    if (day && (!first || day < first)) firstUse.set(containerId, day);
  }
  return ask.containers.flatMap((container) => {
    const { id, lastGoodDay, held } = container;
    if (held || (lastGoodDay && lastGoodDay < ask.today)) return [];
    const first = firstUse.get(id);
    const limit = first ? goodUntil(container, first) : lastGoodDay;
    const amount = freeOf(container) - (taken.get(id) ?? 0);
    if (!limit || limit > ask.wasteUntil || amount <= 0) return [];
    return [{ containerId: id, amount: exactInteger<StockUnit>(amount), lastGoodDay: limit }];
  });
}
