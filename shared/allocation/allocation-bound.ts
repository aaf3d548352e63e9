import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { type Measures, measureAllocation } from '@/shared/allocation/measure-allocation';
import type { Problem } from '@/shared/allocation/problem';
import { splitWeight, wasteAtRest } from '@/shared/allocation/program-sums';
import type { Bounds } from '@/shared/allocation/solve-problem';
import { surfacesOf } from '@/shared/allocation/surfaces-of';
import { usedLots } from '@/shared/allocation/used-lots';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * What no allocation of the ask can be better than, put together from what was proved of its problems and what no problem
 * touches: the needs that nothing can serve, what their surfaces are of already, and the stock that no need can take. The order of expiry has no bound where
 * some problem has none. Each measure holds for allocations that
 * are at the bound in those before it, which is all a comparison in order asks.
 */
export function allocationBound(
  ask: AllocationAsk,
  solved: readonly { readonly problem: Problem; readonly bounds: Bounds }[],
): { readonly bound: Measures; readonly orderIsBound: boolean } {
  const short = new Map<CalendarDate, number>();
  const add = (day: CalendarDate, amount: number) => {
    if (amount > 0) short.set(day, (short.get(day) ?? 0) + amount);
  };
  const served = new Set(solved.flatMap(({ problem }) => problem.needs.map(({ need }) => need.id)));
  for (const need of ask.needs) if (!served.has(need.id)) add(dayOfNeed(need, ask.today), need.amount);

  const untouched = measureAllocation(ask, []);
  let [splitSurfaces, lotChanges, waste, opened, order] = [0, 0, untouched.waste, 0, 0];
  for (const members of surfacesOf(ask.needs)) {
    if (members.some((at) => served.has(ask.needs[at]?.id ?? ''))) continue;
    const lots = usedLots(ask, members).length;
    splitSurfaces += Number(lots > 1);
    lotChanges += Math.max(0, lots - 1);
  }
  for (const { problem, bounds } of solved) {
    const { step, weightStep, groups, needs } = problem;
    for (const [day, amount] of bounds.short) add(day, amount * step);
    const splits = Math.floor(bounds.lots / splitWeight(problem));
    splitSurfaces += splits;
    lotChanges += bounds.lots - splits * splitWeight(problem);
    waste += (bounds.waste - wasteAtRest(problem)) * step * weightStep;
    opened += bounds.opened;
    const wanted = needs.reduce((sum, { need }) => sum + need.amount, 0);
    const missing = [...bounds.short.values()].reduce((sum, amount) => sum + amount * step, 0);
    order += (bounds.order ?? 0) * step + Math.min(...groups.map(({ rank }) => rank)) * (wanted - missing);
  }
  const bound = {
    short: [...short].sort(([a], [b]) => (a < b ? -1 : 1)).map(([on, amount]) => ({ on, amount })),
    splitSurfaces,
    lotChanges,
    waste,
    wasteBy: untouched.wasteBy,
    opened,
    order,
  };
  return { bound, orderIsBound: solved.every(({ bounds }) => bounds.order !== undefined) };
}
