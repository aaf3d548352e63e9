import type { StandingNeed } from '@/app/_server/needs/stand-needs';
import { joinToBuy, type ToBuy } from '@/app/_server/needs/to-buy';
import type { Money, NeedCost } from '@/shared/promise/cost-of-need';
import type { Part } from '@/shared/promise/material-need';
import { minorUnits } from '@/shared/units/minor-units';

/** The needs of a job for one material, and how they stand together. */
export type JoinedNeeds = { needs: readonly [StandingNeed, ...StandingNeed[]]; together: StandingNeed };

/** The needs of a job by what is needed: coats of one finish are one line to look at. Wood is left as it is. */
export function joinNeeds(needs: readonly StandingNeed[]): JoinedNeeds[] {
  const byThing = new Map<string, [StandingNeed, ...StandingNeed[]]>();
  for (const each of needs) {
    const { product, system, unit, id } = each.need;
    const key = product
      ? `product ${product.id} ${unit}`
      : system
        ? `${system.id} ${system.part} ${unit}`
        : `wood ${id}`;
    const known = byThing.get(key);
    if (known) known.push(each);
    else byThing.set(key, [each]);
  }
  return [...byThing.values()].map((list) => ({ needs: list, together: together(list) }));
}

function together(list: readonly [StandingNeed, ...StandingNeed[]]): StandingNeed {
  const [first, ...rest] = list;
  if (rest.length === 0) return first;
  const buys = list.flatMap((each) => each.buy ?? []);
  const [buy, ...more] = buys;
  const all = <T>(pick: (need: StandingNeed) => readonly T[]) => list.flatMap(pick);
  return {
    need: { ...first.need, amount: list.reduce((sum, each) => sum + each.need.amount, 0) },
    lots: all((each) => each.lots),
    used: list.reduce((sum, each) => sum + Math.min(each.used, each.need.amount), 0),
    standing: {
      reserved: partsOf(all((each) => each.standing.reserved)),
      failing: partsOf(all((each) => each.standing.failing)),
      have: partsOf(all((each) => each.standing.have)),
      // Every need names all that others hold: it is said once.
      elsewhere: first.standing.elsewhere,
      arriving: all((each) => each.standing.arriving),
      short: list.reduce((sum, each) => sum + each.standing.short, 0),
      lotsMixed: list.some((each) => each.standing.lotsMixed),
      uncounted: first.standing.uncounted,
    },
    buy: buy && joinToBuy([buy, ...more] satisfies [ToBuy, ...ToBuy[]]),
    cost: costsOf(list.map((each) => each.cost)),
  };
}

/** One line for a container, however many needs it serves. */
function partsOf(parts: readonly Part[]): Part[] {
  const byThing = new Map<number, Part>();
  for (const part of parts) {
    const known = byThing.get(part.stockId);
    byThing.set(part.stockId, known ? { ...known, amount: known.amount + part.amount } : part);
  }
  return [...byThing.values()];
}

/** The money of several needs together; not known whole where it is not of one. */
export function costsOf(costs: readonly NeedCost[]): NeedCost {
  const sum = (pick: (cost: NeedCost) => Money): Money => ({
    minor: minorUnits(costs.reduce((total, cost) => total + pick(cost).minor, 0)),
    known: costs.every((cost) => pick(cost).known),
  });
  return { inHand: sum((cost) => cost.inHand), toCome: sum((cost) => cost.toCome), atRisk: sum((cost) => cost.atRisk) };
}
