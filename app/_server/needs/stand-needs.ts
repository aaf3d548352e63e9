import { type ArrivingLine, listArriving } from '@/app/_server/arriving/list-arriving';
import { loadStockFor } from '@/app/_server/needs/load-stock-for';
import { loadWood } from '@/app/_server/needs/load-wood';
import { materialNeed } from '@/app/_server/needs/material-standing';
import { offersOf } from '@/app/_server/needs/offers-of';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type { ToBuy } from '@/app/_server/needs/to-buy';
import { type LotTaken, type ProductFacts, takenForNeeds } from '@/app/_server/needs/used-of-needs';
import { woodNeed } from '@/app/_server/needs/wood-standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { NeedCost } from '@/shared/promise/cost-of-need';
import type { Coming, MaterialNeed, NeedStanding, OnHand } from '@/shared/promise/material-need';
import { planMaterialNeeds } from '@/shared/promise/plan-material-needs';
import { planWoodNeeds } from '@/shared/promise/plan-wood-needs';
import { gramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A need with how it stands. Of wood, parts count one each. */
export type StandingNeed = {
  need: NeedFacts;
  used: number;
  /** The lots that were taken for it, the newest last. */
  lots: readonly LotTaken[];
  standing: Omit<NeedStanding, 'needId'>;
  buy: ToBuy | undefined;
  cost: NeedCost;
};

/** A product that some need may be met from. */
export type ProductOfNeed = ProductFacts & {
  name: string;
  systemId: number | null;
  part: string | null;
  careWindowDays: number;
  policyKind: string;
};

/** Everything the needs were set against. */
export type StoodNeeds = {
  needs: StandingNeed[];
  stock: OnHand[];
  productsOf: ReadonlyMap<number, readonly number[]>;
  products: ReadonlyMap<number, ProductOfNeed>;
  coming: ArrivingLine[];
};

/** Sets needs against what is on hand, promised and ordered, all of them together: what one takes another does not have. */
export async function standNeeds(
  tx: WriteTransaction,
  needs: readonly NeedFacts[],
  { today, currency }: { today: CalendarDate; currency: string },
): Promise<StoodNeeds> {
  const systemIds = [...new Set(needs.flatMap((need) => need.system?.id ?? []))];
  const ownIds = [...new Set(needs.flatMap((need) => need.product?.id ?? []))];
  const rows = await tx.product.findMany({
    where: { OR: [{ id: { in: ownIds } }, { systemId: { in: systemIds } }] },
    orderBy: { name: 'asc' },
    select: {
      id: true,
      name: true,
      unit: true,
      densityGramsPerLitre: true,
      systemId: true,
      part: true,
      careWindowDays: true,
      policyKind: true,
    },
  });
  const products = new Map<number, ProductOfNeed>(
    rows.map((row) => {
      const density = row.densityGramsPerLitre === null ? undefined : gramsPerLitre(row.densityGramsPerLitre);
      return [
        row.id,
        { ...row, unit: row.unit as StockUnit, density: density?.ok ? density.value : undefined },
      ] as const;
    }),
  );
  const productsOf = new Map<number, readonly number[]>(
    needs.map((need) => {
      const { product, system } = need;
      if (product) return [need.id, [product.id]];
      return [
        need.id,
        rows.filter((row) => system && row.systemId === system.id && row.part === system.part).map((row) => row.id),
      ];
    }),
  );
  const productIds = [...new Set([...productsOf.values()].flat())];
  const densities = new Map([...products.values()].map(({ id, density }) => [id, density]));
  const woodNeeds = needs.filter((need) => need.kind === 'wood');
  const [{ stock }, offers, coming, used, wood] = await Promise.all([
    loadStockFor(tx, productIds, densities, currency),
    offersOf(tx, productIds, currency),
    listArriving(tx),
    takenForNeeds(
      tx,
      needs.filter((need) => need.kind === 'material'),
      productsOf,
      products,
    ),
    woodNeeds.length ? loadWood(tx, [...new Set(woodNeeds.map((need) => need.jobId))], currency) : [],
  ]);
  const usedOf = ({ id }: NeedFacts) => used.get(id) ?? { amount: 0, lots: [] };
  const materials = needs
    .filter((need) => need.kind === 'material')
    .map(
      (need): MaterialNeed => ({
        ...need,
        used: usedOf(need).amount,
        lotsUsed: usedOf(need).lots.map(({ lotId }) => lotId),
        productIds: productsOf.get(need.id) ?? [],
      }),
    );
  const orders = coming.flatMap(({ id, product, unit, amount, dueOn }): Coming[] =>
    product ? [{ id, productId: product.id, unit, density: densities.get(product.id), amount, on: dueOn }] : [],
  );
  const materialStandings = planMaterialNeeds(materials, stock, orders, today);
  const woodStandings = planWoodNeeds(
    woodNeeds.map((need) => ({ id: need.id, jobId: need.jobId, on: need.on, amount: need.amount, ...woodOf(need) })),
    wood,
    coming.filter((each) => !each.product).map((each) => ({ ...each, on: each.dueOn })),
    today,
  );
  const stood: StandingNeed[] = [];
  for (const need of needs) {
    if (need.kind === 'wood') {
      const standing = woodStandings.find((each) => each.needId === need.id);
      if (standing) stood.push(await woodNeed(tx, need, standing, coming, currency));
      continue;
    }
    const standing = materialStandings.find((each) => each.needId === need.id);
    if (!standing) continue;
    const candidates = (productsOf.get(need.id) ?? []).flatMap((id) => products.get(id) ?? []);
    stood.push(materialNeed(need, usedOf(need), standing, candidates, offers, coming));
  }
  return { needs: stood, stock, productsOf, products, coming };
}

function woodOf({ wood }: NeedFacts) {
  return {
    species: wood?.species ?? '',
    form: wood?.form ?? '',
    lengthNm: wood?.lengthNm ?? undefined,
    widthNm: wood?.widthNm ?? undefined,
    thicknessNm: wood?.thicknessNm ?? undefined,
  };
}
