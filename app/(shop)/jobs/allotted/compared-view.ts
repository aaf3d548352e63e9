import type { ReadAllocation } from '@/app/_server/allocation/read-allocation';
import type { AllottedContext } from '@/app/(shop)/jobs/allotted/allotted-view';
import type { Take } from '@/shared/allocation/allocation-ask';
import { compareAllocations } from '@/shared/allocation/compare-allocations';
import { measureAllocation } from '@/shared/allocation/measure-allocation';
import { sayDifference } from '@/shared/allocation/say-difference';
import { shortOf } from '@/shared/allocation/short-of';
import { unusedPastLimit } from '@/shared/allocation/unused-past-limit';
import type { CurrencyCode } from '@/shared/units/currency';
import { minorUnits } from '@/shared/units/minor-units';
import { printMoney } from '@/shared/units/print-money';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

export type Compared = { term: string; best: string; byHand: string }[];

/** The best way and a careful hand's beside each other, in amounts, in the order in which they count. */
export function comparedView({ ask, allocation, byHand }: ReadAllocation, context: AllottedContext): Compared {
  const row = (term: string, say: (takes: readonly Take[]) => string) => ({
    term,
    best: say(allocation.takes),
    byHand: say(byHand),
  });
  const unitOf = new Map<string, StockUnit>([...ask.needs, ...ask.containers].map(({ id, unit }) => [id, unit]));
  const sumUp = (list: readonly { id: string; amount: number }[]) => {
    const byUnit = new Map<StockUnit, number>();
    for (const { id, amount } of list) {
      const unit = unitOf.get(id) ?? 'mg';
      byUnit.set(unit, (byUnit.get(unit) ?? 0) + amount);
    }
    const said = [...byUnit].map(([unit, amount]) => printQuantity(amountOf(unit, amount), unit, context));
    return said.length === 0 ? 'nothing' : said.join(' and ');
  };
  const measured = (takes: readonly Take[]) => measureAllocation(ask, takes);
  return [
    row('Short', (takes) => sumUp(shortOf(ask, takes).map(({ needId: id, amount }) => ({ id, amount })))),
    row('Surfaces of more than one lot', (takes) => String(measured(takes).splitSurfaces)),
    row('Passes its limit unused', (takes) => {
      const { waste, wasteBy } = measured(takes);
      const unused = sumUp(unusedPastLimit(ask, takes).map(({ containerId: id, amount }) => ({ id, amount })));
      const worth = printMoney(minorUnits(Math.round(waste / 1e6)), context.currency as CurrencyCode);
      return wasteBy === 'value' && waste > 0 ? `${unused}, ${worth}` : unused;
    }),
    row('Sealed tins opened', (takes) => String(measured(takes).opened)),
  ];
}

/** Which of the two is better and in what, in one sentence. */
export function saidDifference({ ask, allocation, byHand }: ReadAllocation, context: AllottedContext): string {
  const { differences } = compareAllocations(ask, allocation.takes, byHand);
  const [first] = differences;
  if (!first) return 'Taking what expires first, tin by tin, comes to the same.';
  return `Taking what expires first, tin by tin, is worse. ${sayDifference(first, context)}`;
}
