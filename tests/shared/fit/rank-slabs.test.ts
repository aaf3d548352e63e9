import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rankSlabs, type SlabFacts } from '@/shared/fit/rank-slabs';
import { minorUnits } from '@/shared/units/minor-units';
import { nanometres } from '@/shared/units/nanometres';

const facts = (id: string, more: Partial<SlabFacts> = {}): SlabFacts => ({
  id,
  answer: 'yes',
  promised: false,
  dryInDays: 0,
  ...more,
});
const order = (...slabs: readonly SlabFacts[]) => rankSlabs(slabs).map(({ id }) => id);

describe('the order a maker would take slabs in', () => {
  it('is what fits, then what nearly does', () => {
    expect(order(facts('no', { answer: 'no' }), facts('nearly', { answer: 'nearly' }), facts('yes'))).toEqual([
      'yes',
      'nearly',
      'no',
    ]);
  });

  it.each([
    ['promised', { promised: true }],
    ['not dry by the day', { dryInDays: 3 }],
    ['too thin', { thicknessWanted: nanometres(40), thicknessLeft: nanometres(39) }],
    ['too heavy', { mostWeight: 100, weight: 101 }],
    ['half of a pair', { splitsPair: true }],
  ])('puts a slab that is %s after one that is not, whatever it costs', (_, more) => {
    expect(
      order(facts('stopped', { ...more, price: minorUnits(1) }), facts('free', { price: minorUnits(99_999) })),
    ).toEqual(['free', 'stopped']);
  });

  it('puts the narrower river first, whatever wood is left over', () => {
    const wide = facts('wide', { riverArea: 900, wasteArea: 1 });
    expect(order(wide, facts('narrow', { riverArea: 300, wasteArea: 500 }))).toEqual(['narrow', 'wide']);
  });

  it('puts what is not known between good and bad, and says so', () => {
    const ranked = rankSlabs([
      facts('late', { dryInDays: 1 }),
      { id: 'unknown', answer: 'yes', promised: false },
      facts('dry'),
    ]);
    expect(ranked.map(({ id }) => id)).toEqual(['dry', 'unknown', 'late']);
    expect(ranked[1]?.reasons[0]).toEqual({ about: 'dry', standing: 'unknown' });
    expect(ranked[2]?.reasons[0]).toEqual({ about: 'dry', standing: 'against', amount: 1 });
  });

  it('then is the least wood lost beyond the offcut kept, then the price', () => {
    expect(
      order(
        facts('wasteful', { wasteArea: 500, offcutArea: 100, price: minorUnits(1) }),
        facts('dear', { wasteArea: 500, offcutArea: 300, price: minorUnits(9) }),
        facts('cheap', { wasteArea: 200, price: minorUnits(5) }),
      ),
    ).toEqual(['cheap', 'dear', 'wasteful']);
  });

  it('allows exactly what is asked', () => {
    const exact = facts('exact', {
      thicknessWanted: nanometres(40),
      thicknessLeft: nanometres(40),
      mostWeight: 5,
      weight: 5,
    });
    expect(rankSlabs([exact])[0]?.reasons.filter(({ standing }) => standing === 'against')).toEqual([]);
  });

  it('keeps every slab once, and does not depend on the order given where facts differ', () => {
    const slab = fc.record({
      answer: fc.constantFrom('yes' as const, 'nearly' as const, 'no' as const),
      promised: fc.boolean(),
      dryInDays: fc.option(fc.integer({ min: -5, max: 5 }), { nil: undefined }),
      price: fc.option(
        fc.nat(50).map((price) => minorUnits(price)),
        { nil: undefined },
      ),
    });
    fc.assert(
      fc.property(fc.array(slab, { maxLength: 12 }), (some) => {
        const slabs = some.map(({ dryInDays, price, ...rest }, nr) => ({
          ...rest,
          ...(dryInDays === undefined ? {} : { dryInDays }),
          ...(price === undefined ? {} : { price }),
          id: `${nr}`,
          wasteArea: 1000 + nr,
        }));
        const ranked = rankSlabs(slabs);
        expect(ranked.map(({ id }) => id)).toEqual(rankSlabs([...slabs].reverse()).map(({ id }) => id));
        expect(new Set(ranked.map(({ id }) => id)).size).toBe(slabs.length);
        expect(ranked.map(({ rank }) => rank)).toEqual(slabs.map((_, nr) => nr + 1));
      }),
    );
  });
});
