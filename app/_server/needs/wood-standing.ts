import type { ArrivingLine } from '@/app/_server/arriving/list-arriving';
import { lastPaidForWood } from '@/app/_server/needs/load-wood';
import { nameOf } from '@/app/_server/needs/need-name';
import type { StandingNeed } from '@/app/_server/needs/stand-needs';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { pieces, type ToBuy } from '@/app/_server/needs/to-buy';
import type { WriteTransaction } from '@/prisma/open-book';
import { costOfNeed } from '@/shared/promise/cost-of-need';
import type { WoodStanding } from '@/shared/promise/plan-wood-needs';
import { shareOfPrice } from '@/shared/promise/share-of-price';
import { minorUnits } from '@/shared/units/minor-units';

/** A need of wood with what to buy for it and what it costs. */
export async function woodNeed(
  tx: WriteTransaction,
  need: NeedFacts,
  wood: WoodStanding,
  coming: readonly ArrivingLine[],
  currency: string,
): Promise<StandingNeed> {
  const last = wood.short + wood.arriving.length > 0 ? await lastPaidForWood(tx, need, currency) : undefined;
  const parts = (list: WoodStanding['have']) => list.map((each) => ({ ...each, amount: 1, stockAmount: 1 }));
  const standing = {
    ...wood,
    reserved: parts(wood.reserved),
    failing: parts(wood.failing),
    have: parts(wood.have),
    lotsMixed: false,
    uncounted: [],
  };
  const times = (count: number) => (last ? minorUnits(last.paid * count) : undefined);
  const cost = costOfNeed({
    ...standing,
    arriving: wood.arriving.map(({ id, amount }) => {
      const order = coming.find((each) => each.id === id);
      const paid = order?.cost && shareOfPrice(amount, { paid: order.cost.minor, size: order.amount });
      return { cost: paid ?? times(amount) };
    }),
    short: wood.short > 0 ? { cost: times(wood.short) } : undefined,
  });
  const buy: ToBuy | undefined =
    wood.short > 0
      ? {
          productId: null,
          product: nameOf(need),
          unit: 'piece',
          short: wood.short,
          offer: undefined,
          packages: pieces(wood.short, times(wood.short)),
          price: times(wood.short),
          lastPaidOn: last?.on,
          by: need.on,
          goodTo: need.on,
          careDays: 0,
          keeps: true,
        }
      : undefined;
  return { need, used: wood.used.length, lots: [], standing, buy, cost };
}
