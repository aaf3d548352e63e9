import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOfNeed } from '@/shared/promise/cost-of-need';
import { packagesToBuy } from '@/shared/promise/packages-to-buy';
import { shareCost } from '@/shared/promise/share-cost';
import { shareOfPrice } from '@/shared/promise/share-of-price';
import { minorUnits } from '@/shared/units/minor-units';

const money = (amount: number) => minorUnits(amount);

describe('the cost of what is in hand', () => {
  it('is shared by amount among what was used, each promise and the rest', () => {
    const shares = shareCost(money(4950), { size: 2_500_000, left: 2_000_000, promises: [1_000_000, 500_000] });
    expect(shares).toEqual({ promises: [1980, 990], free: 990 });
  });

  it('of a container that holds more than it was sold as is shared by what it holds', () => {
    expect(shareCost(money(100), { size: 10, left: 20, promises: [5] })).toEqual({ promises: [25], free: 75 });
  });

  it('adds up to the price to the last minor unit, whatever is promised of a full one', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: 99_999 }),
        fc.array(fc.integer({ min: 1, max: 999 }), { maxLength: 6 }),
        fc.nat(),
        (paid, promises, rest) => {
          const left = promises.reduce((sum, each) => sum + each, 0) + (rest % 1000);
          fc.pre(left > 0);
          const shares = shareCost(money(paid), { size: left, left, promises });
          expect(shares.promises.reduce((sum, each) => sum + each, 0) + shares.free).toBe(paid);
        },
      ),
    );
  });

  it('cannot be shared among more than there is', () => {
    expect(() => shareCost(money(1), { size: 5, left: 5, promises: [6] })).toThrow(RangeError);
  });
});

describe('the cost of a need', () => {
  it('is in hand, to come, and at risk: what will fail its day and what is short', () => {
    const cost = costOfNeed({
      reserved: [{ cost: money(500) }],
      have: [{ cost: money(250) }],
      failing: [{ cost: money(80) }],
      arriving: [{ cost: money(40) }],
      short: { cost: money(20) },
    });
    expect(cost).toEqual({
      inHand: { minor: 750, known: true },
      toCome: { minor: 60, known: true },
      atRisk: { minor: 100, known: true },
    });
  });

  it('says where a price is not known, instead of counting it as nothing in silence', () => {
    const cost = costOfNeed({ reserved: [{}], have: [{ cost: money(250) }], failing: [], arriving: [], short: {} });
    expect(cost.inHand).toEqual({ minor: 250, known: false });
    expect(cost.atRisk.known).toBe(false);
    expect(costOfNeed({ reserved: [], have: [], failing: [], arriving: [], short: undefined }).atRisk).toEqual({
      minor: 0,
      known: true,
    });
  });

  it('at what was last paid goes by the share of the package, to the nearest minor unit', () => {
    expect(shareOfPrice(800_000, { paid: money(4950), size: 2_500_000 })).toBe(1584);
    expect(shareOfPrice(1, { paid: money(1), size: 2 })).toBe(1);
  });
});

describe('what to buy', () => {
  const kg = (...sizes: number[]) => sizes.map((size) => ({ size }));

  it('reaches the amount and leaves least over; then the fewest packages', () => {
    expect(packagesToBuy(62, kg(10, 50))).toMatchObject({
      packs: [
        { size: 50, count: 1 },
        { size: 10, count: 2 },
      ],
      amount: 70,
    });
    expect(packagesToBuy(100, kg(10, 50))?.packs).toEqual([{ size: 50, count: 2 }]);
    expect(packagesToBuy(1, kg(50))).toMatchObject({ packs: [{ size: 50, count: 1 }], price: undefined });
  });

  it('is the cheapest where every size has a price', () => {
    const offers = [
      { size: 10, paid: money(300) },
      { size: 50, paid: money(700) },
    ];
    expect(packagesToBuy(21, offers)).toMatchObject({ packs: [{ size: 50, count: 1 }], price: 700 });
    expect(packagesToBuy(20, offers)).toMatchObject({ packs: [{ size: 10, count: 2 }], price: 600 });
  });

  it('is nothing where nothing is short or no size is known', () => {
    expect(packagesToBuy(0, kg(5))).toBeUndefined();
    expect(packagesToBuy(-1, kg(5))).toBeUndefined();
    expect(packagesToBuy(5, kg())).toBeUndefined();
    expect(packagesToBuy(5, kg(0))).toBeUndefined();
  });

  it('of a very large amount is worked out at once, and still reaches it', () => {
    const found = packagesToBuy(1_000_000_007, kg(1000, 3000, 7000));
    expect(found?.amount).toBeGreaterThanOrEqual(1_000_000_007);
    expect(found?.amount).toBeLessThan(1_000_000_007 + 1000);
  });

  it('without prices leaves as little over as trying everything finds', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 2, max: 9 }), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 60 }),
        (sizes, short) => {
          const reach = [...Array(short + 10).keys()].map((total) => total === 0);
          for (let total = 1; total < reach.length; total += 1)
            reach[total] = sizes.some((size) => total >= size && reach[total - size] === true);
          const least = reach.findIndex((can, total) => can && total >= short);
          expect(packagesToBuy(short, kg(...sizes))?.amount).toBe(least);
        },
      ),
    );
  });
});
