import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Demand, Supply } from '@/shared/promise/supply-and-demand';

/** How much of every demand could be had, and how much in all. */
export type Cover = { readonly total: number; readonly byDemand: ReadonlyMap<string, number> };

/**
 * The most that can be had of all demands together out of what is promised to nobody: day by day, each from what is here
 * and good for as long as it asks, what ends first before what ends later. What is here for a demand is here for every
 * later one, and of what would do for two of them the later may have what is left: so serving the earliest day first, from
 * the supply that ends first of those that last, leaves no more unserved than any other way (where each is good for its
 * own day alone, F. Glover, "Maximum matching in a convex bipartite graph", Naval Research Logistics Quarterly 14, 1967;
 * from memory). A demand may be without end: `Infinity` takes all that is there for it.
 *
 * Example: 5 to 10 Dec and 5 to 20 Dec; 4 wanted on 10 Dec and 6 on 15 Dec → 4 and 5.
 */
export function coverDemands(supplies: readonly Supply[], demands: readonly Demand[]): Cover {
  const coming = supplies
    .map(({ from, lastGoodDay, amount, promised }) => ({ from, until: lastGoodDay ?? LAST, left: amount - promised }))
    .filter((each) => each.left > 0)
    .sort((a, b) => byDay(a.from, b.from));
  const here: typeof coming = [];
  const byDemand = new Map<string, number>();
  let total = 0;
  let next = 0;
  for (const { id, on, goodTo = on, amount } of [...demands].sort((a, b) => byDay(a.on, b.on))) {
    let arrived = false;
    for (let supply = coming[next]; supply && supply.from <= on; supply = coming[next]) {
      here.push(supply);
      arrived = true;
      next += 1;
    }
    if (arrived) here.sort((a, b) => byDay(a.until, b.until));
    let missing = amount;
    let had = 0;
    for (const supply of here) {
      if (missing <= 0) break;
      if (supply.until < goodTo) continue;
      const take = Math.min(supply.left, missing);
      supply.left -= take;
      missing -= take;
      had += take;
    }
    byDemand.set(id, (byDemand.get(id) ?? 0) + had);
    total += had;
  }
  return { total, byDemand };
}

const LAST = '9999-12-31' as CalendarDate;

function byDay(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
