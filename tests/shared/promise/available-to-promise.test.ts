import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { availableToPromise, freeToPromise } from '@/shared/promise/available-to-promise';
import { coverDemands } from '@/shared/promise/cover-demands';
import type { Demand, Supply } from '@/shared/promise/supply-and-demand';
import { stepOnDay } from '@/tests/shared/promise/step-on-day';
import { comes, later, onHand, TODAY, wants } from '@/tests/shared/promise/supplies';

const free = (supplies: Supply[], demands: Demand[], on = 0) =>
  stepOnDay(availableToPromise(supplies, demands, TODAY), later(on))?.free;

describe('what can be promised', () => {
  it('is all that is here, good and promised to nobody, where nothing else is needed', () => {
    expect(availableToPromise([onHand(10, undefined, 3)], [], TODAY)).toEqual([
      { from: TODAY, good: 10, promised: 3, kept: 0, free: 7, reasons: [{ code: 'today' }] },
    ]);
    expect(availableToPromise([], [], TODAY)).toMatchObject([{ free: 0, good: 0 }]);
  });

  it('goes down the day after something ends, which is named; the last good day is itself good', () => {
    const steps = availableToPromise([onHand(10, 5), onHand(4)], [], TODAY);
    expect(steps.map((step) => [step.from, step.free])).toEqual([
      [TODAY, 14],
      [later(6), 4],
    ]);
    expect(steps[1]?.reasons).toMatchObject([{ code: 'ends', words: 'tin of 10', lastGoodDay: later(5) }]);
    expect(free([onHand(10, 5)], [], 5)).toBe(10);
    expect(free([onHand(10, 5)], [], 6)).toBe(0);
  });

  it('goes up on the day an order is due', () => {
    const steps = availableToPromise([onHand(2), comes(5, 4)], [], TODAY);
    expect(steps.map((step) => [step.from, step.free])).toEqual([
      [TODAY, 2],
      [later(4), 7],
    ]);
    expect(steps[1]?.reasons).toMatchObject([{ code: 'comes', words: 'Tarn', amount: 5 }]);
  });

  it('leaves to a later need what nothing that comes later can give it', () => {
    expect(free([onHand(10), comes(5, 14)], [wants(8, 19)])).toBe(7);
    expect(free([onHand(10), comes(5, 14)], [wants(8, 19)], 14)).toBe(7);
    expect(free([onHand(10)], [wants(8, 19)])).toBe(2);
    // After the need nothing more is free than before: it took its share.
    expect(free([onHand(10)], [wants(8, 3)], 20)).toBe(2);
  });

  it('keeps nothing for a need that what is here cannot reach', () => {
    expect(free([onHand(10, 5)], [wants(8, 19)])).toBe(10);
    expect(free([onHand(10, 5), onHand(8, 30)], [wants(8, 19)])).toBe(10);
  });

  it('is never below zero: more needed than there is leaves nothing free', () => {
    expect(free([onHand(10)], [wants(30, 3)])).toBe(0);
    expect(free([onHand(10)], [wants(30, 3)], 9)).toBe(0);
  });

  it('counts a need of a day that has passed as today’s, and stock past its day as none', () => {
    expect(free([onHand(10)], [{ ...wants(4, 0), on: '2026-11-01' as typeof TODAY }])).toBe(6);
    expect(availableToPromise([{ ...onHand(10), lastGoodDay: '2026-11-30' as typeof TODAY }], [], TODAY)).toMatchObject(
      [{ good: 0, free: 0 }],
    );
  });
});

const aSupply = fc.record({
  amount: fc.integer({ min: 1, max: 6 }),
  from: fc.nat({ max: 6 }),
  lasts: fc.option(fc.nat({ max: 6 }), { nil: undefined }),
  part: fc.integer({ min: 0, max: 3 }),
});
const aDemand = fc.record({
  amount: fc.integer({ min: 1, max: 6 }),
  on: fc.nat({ max: 10 }),
  keeps: fc.constantFrom(0, 0, 1, 4),
});
const supplies = fc.array(aSupply, { maxLength: 5 }).map((list) =>
  list.map(
    ({ amount, from, lasts, part }, nr): Supply => ({
      ...comes(amount, from, lasts === undefined ? undefined : from + lasts),
      id: `s${nr}`,
      promised: Math.min(part, amount),
    }),
  ),
);
const demands = fc
  .array(aDemand, { maxLength: 5 })
  .map((list) =>
    list.map(({ amount, on, keeps }, nr): Demand => ({ ...wants(amount, on, `d${nr}`), goodTo: later(on + keeps) })),
  );

/** The most that can be served, by augmenting paths: another way to the same number. */
function mostServed(from: readonly Supply[], of: readonly Demand[]): number {
  const units = from.flatMap((supply) => [...Array(supply.amount - supply.promised)].map(() => supply));
  const wanted = of.flatMap((demand) => [...Array(demand.amount)].map(() => demand));
  const servedBy = new Map<number, number>();
  const serve = (want: number, seen: Set<number>): boolean =>
    units.some((unit, nr) => {
      const { on = TODAY, goodTo = on } = wanted[want] ?? {};
      if (seen.has(nr) || unit.from > on || (unit.lastGoodDay ?? goodTo) < goodTo) return false;
      seen.add(nr);
      const other = servedBy.get(nr);
      if (other !== undefined && !serve(other, seen)) return false;
      servedBy.set(nr, want);
      return true;
    });
  return wanted.filter((_, want) => serve(want, new Set())).length;
}

describe('whatever is here, comes and is needed', () => {
  it('serves as much of the needs as augmenting paths find', () => {
    fc.assert(
      fc.property(supplies, demands, (here, needed) => {
        expect(coverDemands(here, needed).total).toBe(mostServed(here, needed));
      }),
    );
  });

  it('good is promised, kept and free together, none of them below zero', () => {
    fc.assert(
      fc.property(supplies, demands, (here, needed) => {
        for (const { good, promised, kept, free: left } of availableToPromise(here, needed, TODAY)) {
          expect(promised + kept + left).toBe(good);
          expect(Math.min(promised, kept, left)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('what is free can be promised and no need that could be met is met less; one more cannot', () => {
    fc.assert(
      fc.property(supplies, demands, fc.nat({ max: 12 }), (here, needed, on) => {
        const left = free(here, needed, on) ?? 0;
        const before = mostServed(here, needed);
        const withAll = left === 0 ? before : mostServed(here, [...needed, wants(left, on, 'new')]);
        expect(withAll).toBe(before + left);
        expect(mostServed(here, [...needed, wants(left + 1, on, 'new')])).toBe(before + left);
      }),
    );
  });

  it('what is free for a day and good to a later one can be promised so, and no more of it', () => {
    fc.assert(
      fc.property(supplies, demands, fc.nat({ max: 8 }), fc.nat({ max: 6 }), (here, needed, on, keeps) => {
        const day = { on: later(on), goodTo: later(on + keeps) };
        const left = freeToPromise(here, needed, day, TODAY);
        const before = mostServed(here, needed);
        const withMore = (amount: number) => mostServed(here, [...needed, { ...wants(amount, on, 'new'), ...day }]);
        expect(withMore(left)).toBe(before + left);
        expect(withMore(left + 1)).toBe(before + left);
        expect(left).toBeLessThanOrEqual(free(here, needed, on) ?? 0);
        if (keeps === 0) expect(left).toBe(free(here, needed, on));
      }),
    );
  });

  it('without an end, and every need met, it is the least surplus from the day on', () => {
    fc.assert(
      fc.property(supplies, demands, fc.nat({ max: 12 }), (some, needed, on) => {
        const here = some.map((each) => ({ ...each, lastGoodDay: undefined }));
        const days = [...Array(20).keys()];
        const surplus = days.map(
          (nr) =>
            here.filter((each) => each.from <= later(nr)).reduce((sum, each) => sum + each.amount - each.promised, 0) -
            needed.filter((each) => each.on <= later(nr)).reduce((sum, each) => sum + each.amount, 0),
        );
        fc.pre(surplus.every((each) => each >= 0));
        expect(free(here, needed, on)).toBe(Math.min(...surplus.slice(on)));
      }),
    );
  });
});
