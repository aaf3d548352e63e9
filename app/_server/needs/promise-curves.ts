import { nameOf } from '@/app/_server/needs/need-name';
import type { StandingNeed, StoodNeeds } from '@/app/_server/needs/stand-needs';
import { standNeeds } from '@/app/_server/needs/stand-needs';
import { type NeedFacts, standingNeeds } from '@/app/_server/needs/standing-needs';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { availableToPromise, freeToPromise, type PromiseStep } from '@/shared/promise/available-to-promise';
import { inUnit } from '@/shared/promise/in-unit';
import type { Demand, Supply } from '@/shared/promise/supply-and-demand';
import { assess } from '@/shared/shelf-life/assess';
import type { StockUnit } from '@/shared/units/stock-unit';

/** How much of one material can be promised, day by day, and what of it this job asks for. */
export type PromiseCurve = {
  key: string;
  name: string;
  unit: StockUnit;
  steps: PromiseStep[];
  /** What this job still needs beside what it is promised: by when, good to which day, and what is free of that kind. */
  asks: { on: CalendarDate; goodTo: CalendarDate; amount: number; free: number }[];
  /** Days other jobs need some that is not promised to them. */
  others: { on: CalendarDate; job: string; amount: number }[];
};

/**
 * The curve of every material that a job needs: what is here, good and promised to nobody, less what other agreed jobs
 * need and were not promised, with what is ordered from the day it is due. Orders that are overdue are left out: nobody
 * knows when they come.
 */
export async function promiseCurves(
  tx: WriteTransaction,
  jobId: number,
  own: StoodNeeds,
  head: { today: CalendarDate; currency: string },
): Promise<PromiseCurve[]> {
  const productIds = [...new Set([...own.productsOf.values()].flat())];
  if (productIds.length === 0) return [];
  const systemIds = [...new Set(own.needs.flatMap(({ need }) => need.system?.id ?? []))];
  const ofOthers = (
    await standingNeeds(tx, {
      kind: 'material',
      jobId: { not: jobId },
      job: { state: 'open' },
      OR: [
        { productId: { in: productIds } },
        { systemId: { in: systemIds } },
        { product: { systemId: { in: systemIds } } },
      ],
    })
  ).filter((need) => need.firm);
  const stood = await standNeeds(tx, ofOthers, head);
  const materials = new Map<string, StandingNeed[]>();
  for (const each of own.needs) {
    if (each.need.kind === 'wood') continue;
    const key = keyOf(each.need);
    materials.set(key, [...(materials.get(key) ?? []), each]);
  }
  return [...materials].flatMap(([key, needs]): PromiseCurve[] => {
    const [first] = needs;
    if (!first) return [];
    const ids = own.productsOf.get(first.need.id) ?? [];
    const { unit } = first.need;
    const theirs = stood.needs.filter(({ need }) => stood.productsOf.get(need.id)?.some((id) => ids.includes(id)));
    const inThis = (amount: number, from: StockUnit, productId: number, round: 'down' | 'up') =>
      inUnit(amount, from, unit, own.products.get(productId)?.density, round) ?? 0;
    const wanting = theirs.flatMap((each) => {
      const amount = inThis(missingOf(each), each.need.unit, ids[0] ?? 0, 'up');
      const { on, goodTo, job, id } = each.need;
      return amount > 0 ? [{ on, goodTo, job, amount, id: String(id) }] : [];
    });
    const demands = wanting.map(({ job, ...each }): Demand => ({ ...each, words: job }));
    const supplies = [...suppliesOf(own, ids, head.today, inThis), ...ordersOf(own, ids, head.today, inThis)];
    const steps = availableToPromise(supplies, demands, head.today);
    const asks = needs.flatMap((each) => {
      const { on, goodTo } = each.need;
      const amount = missingOf(each);
      return amount > 0
        ? [{ on, goodTo, amount, free: freeToPromise(supplies, demands, { on, goodTo }, head.today) }]
        : [];
    });
    const others = wanting.map(({ on, job, amount }) => ({ on, job, amount }));
    return [{ key, name: nameOf(first.need), unit, steps, asks, others }];
  });
}

type InThis = (amount: number, from: StockUnit, productId: number, round: 'down' | 'up') => number;

/** Containers that may be promised on some day: not held, nothing spoilt, and their day known. */
function suppliesOf({ stock }: StoodNeeds, ids: readonly number[], today: CalendarDate, inThis: InThis): Supply[] {
  return stock
    .filter((each) => ids.includes(each.productId))
    .flatMap((each): Supply[] => {
      const verdict = assess({ ...each.candidate, purpose: 'client', dayOfUse: today, today });
      if (verdict.reasons.some((reason) => reason.weight === 'stop' && reason.code !== 'past-limit')) return [];
      const promised = each.promised.reduce((sum, promise) => sum + promise.amount, 0);
      const amount = inThis(each.left, each.unit, each.productId, 'down');
      return [
        {
          id: String(each.stockId),
          words: each.label,
          kind: 'on-hand',
          from: today,
          lastGoodDay: verdict.governing?.lastGoodDay,
          amount,
          promised: Math.min(amount, inThis(promised, each.unit, each.productId, 'up')),
        },
      ];
    });
}

function ordersOf({ coming }: StoodNeeds, ids: readonly number[], today: CalendarDate, inThis: InThis): Supply[] {
  return coming
    .filter((each) => each.product && ids.includes(each.product.id) && each.dueOn >= today)
    .map((each) => ({
      id: `order-${each.id}`,
      words: each.supplier,
      kind: 'arriving',
      from: each.dueOn,
      amount: inThis(each.amount, each.unit, each.product?.id ?? 0, 'down'),
      promised: 0,
    }));
}

/** What a need still wants beside what was used and what it is promised. */
function missingOf({ need, used, standing }: StandingNeed): number {
  return Math.max(0, need.amount - used - standing.reserved.reduce((sum, part) => sum + part.amount, 0));
}

const keyOf = ({ product, system, unit }: NeedFacts) =>
  product ? `product-${product.id}-${unit}` : `system-${system?.id}-${system?.part}-${unit}`;
