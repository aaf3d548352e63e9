import type { ArrivingLine } from '@/app/_server/arriving/list-arriving';
import { nameOf } from '@/app/_server/needs/need-name';
import type { Offers } from '@/app/_server/needs/offers-of';
import type { ProductOfNeed, StandingNeed } from '@/app/_server/needs/stand-needs';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { toBuy } from '@/app/_server/needs/to-buy';
import type { UsedOfNeed } from '@/app/_server/needs/used-of-needs';
import { costOfNeed } from '@/shared/promise/cost-of-need';
import { inUnit } from '@/shared/promise/in-unit';
import type { NeedStanding } from '@/shared/promise/material-need';
import { shareOfPrice } from '@/shared/promise/share-of-price';
import type { MinorUnits } from '@/shared/units/minor-units';

/** A need of a material with what to buy for it and what it costs. */
export function materialNeed(
  need: NeedFacts,
  used: UsedOfNeed,
  standing: NeedStanding,
  candidates: readonly ProductOfNeed[],
  offers: ReadonlyMap<number, Offers>,
  coming: readonly ArrivingLine[],
): StandingNeed {
  // Of several products that will do, the one that was bought last is bought again.
  const [product] = [...candidates].sort((a, b) => {
    const [lastA, lastB] = [offers.get(a.id)?.last?.on ?? '', offers.get(b.id)?.last?.on ?? ''];
    return lastA > lastB ? -1 : lastA < lastB ? 1 : 0;
  });
  const offer = product && offers.get(product.id);
  const priced = (amount: number): MinorUnits | undefined => {
    const inStock = product && inUnit(amount, need.unit, product.unit, product.density, 'up');
    return offer?.last && inStock !== undefined ? shareOfPrice(inStock, offer.last) : undefined;
  };
  const cost = costOfNeed({
    ...standing,
    arriving: standing.arriving.map(({ id, amount }) => {
      const order = coming.find((each) => each.id === id);
      const inOrder = order && inUnit(amount, need.unit, order.unit, product?.density, 'up');
      const paid =
        order?.cost && inOrder !== undefined
          ? shareOfPrice(inOrder, { paid: order.cost.minor, size: order.amount })
          : undefined;
      return { cost: paid ?? priced(amount) };
    }),
    short: standing.short > 0 ? { cost: priced(standing.short) } : undefined,
  });
  const short = product && inUnit(standing.short, need.unit, product.unit, product.density, 'up');
  const buy =
    standing.short > 0
      ? toBuy({
          productId: product?.id ?? null,
          product: product?.name ?? nameOf(need),
          unit: product?.unit ?? need.unit,
          short: short ?? standing.short,
          offer,
          by: need.on,
          goodTo: need.goodTo,
          careDays: product?.careWindowDays ?? 0,
          keeps: product?.policyKind === 'keeps',
        })
      : undefined;
  return { need, used: used.amount, lots: used.lots, standing, buy, cost };
}
