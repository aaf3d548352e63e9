import { loadStockFor } from '@/app/_server/needs/load-stock-for';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { usedOfNeeds } from '@/app/_server/needs/used-of-needs';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { inUnit } from '@/shared/promise/in-unit';
import type { MaterialNeed, OnHand } from '@/shared/promise/material-need';
import { planMaterialNeeds } from '@/shared/promise/plan-material-needs';
import { assess } from '@/shared/shelf-life/assess';
import { gramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A need that what is on hand and free covers today, and on its day no more: what there is will be past its limit. */
export type UnmetNeed = {
  needId: number;
  jobId: number;
  job: string;
  name: string;
  /** What is used for it has to be good to this day. */
  day: CalendarDate;
  unit: StockUnit;
  /** What is neither taken nor promised of it. */
  needed: number;
  /** Free, and good enough today; of that what still is on the day. */
  today: number;
  then: number;
};

/**
 * The needs of open jobs that what is free would cover only if it were earlier. What was taken, and what is promised now,
 * is off; what was promised once and let go is open again; what is done needs nothing more. What is promised and not good
 * by then has a line of its own.
 */
export async function unmetNeeds(
  book: OpenBook,
  { today, currency }: { today: CalendarDate; currency: string },
): Promise<UnmetNeed[]> {
  const tx = book.read;
  const needs = await standingNeeds(tx, { kind: 'material', job: { state: 'open' } });
  if (needs.length === 0) return [];
  const rows = await tx.product.findMany({
    where: {
      OR: [
        { id: { in: needs.flatMap(({ product }) => product?.id ?? []) } },
        { systemId: { in: needs.flatMap(({ system }) => system?.id ?? []) } },
      ],
    },
    select: { id: true, systemId: true, part: true, unit: true, densityGramsPerLitre: true },
  });
  const products = new Map(
    rows.map(({ id, unit, densityGramsPerLitre }) => {
      const density = densityGramsPerLitre === null ? undefined : gramsPerLitre(densityGramsPerLitre);
      return [id, { id, unit: unit as StockUnit, density: density?.ok ? density.value : undefined }] as const;
    }),
  );
  const productsOf = new Map(
    needs.map(({ id, product, system }) => [
      id,
      product
        ? [product.id]
        : rows.filter(({ systemId, part }) => systemId === system?.id && part === system?.part).map((row) => row.id),
    ]),
  );
  const densities = new Map([...products.values()].map(({ id, density }) => [id, density]));
  const [{ stock }, used] = await Promise.all([
    loadStockFor(tx, [...products.keys()], densities, currency),
    usedOfNeeds(tx, needs, productsOf, products),
  ]);
  const materials = needs.map(
    (need): MaterialNeed => ({ ...need, used: used.get(need.id) ?? 0, productIds: productsOf.get(need.id) ?? [] }),
  );
  const standings = new Map(planMaterialNeeds(materials, stock, [], today).map((each) => [each.needId, each]));
  return needs.flatMap((need, nr): UnmetNeed[] => {
    const material = materials[nr];
    const standing = standings.get(need.id);
    if (!material || !standing || need.goodTo <= today) return [];
    const promised = [...standing.reserved, ...standing.failing].reduce((sum, { amount }) => sum + amount, 0);
    const needed = need.amount - material.used - promised;
    if (needed <= 0) return [];
    const { id, jobId, job, unit, goodTo: day } = need;
    const [now, then] = [freeOn(material, stock, today, today), freeOn(material, stock, day, today)];
    if (now < needed || then >= needed) return [];
    const name = need.product?.name ?? `${need.system?.name ?? 'Resin'}, part ${need.system?.part ?? ''}`;
    return [{ needId: id, jobId, job, name, day, unit, needed, today: now, then }];
  });
}

/** What nobody is promised of the material and is good enough on a day, in the need's unit. */
function freeOn(
  { productIds, purpose, unit }: MaterialNeed,
  stock: readonly OnHand[],
  on: CalendarDate,
  today: CalendarDate,
): number {
  return stock.reduce((sum, { productId, candidate, left, promised, unit: of, density }) => {
    if (!productIds.includes(productId)) return sum;
    if (assess({ ...candidate, purpose, dayOfUse: on, today }).word === 'stop') return sum;
    const free = Math.max(
      0,
      promised.reduce((rest, { amount }) => rest - amount, left),
    );
    return sum + (inUnit(free, of, unit, density, 'down') ?? 0);
  }, 0);
}
