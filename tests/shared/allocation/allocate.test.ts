import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveProgram, solveWithin } from '@/app/_server/allocation/solve-program';
import { type Allocation, allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { compareMeasures } from '@/shared/allocation/compare-allocations';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import { measureAllocation } from '@/shared/allocation/measure-allocation';
import type { SolveProgram } from '@/shared/allocation/program';
import { addDays } from '@/shared/calendar/add-days';
import { unwrap } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { day } from '../../support/day';
import { askOf, containerOf, needOf, numbersFrom, TODAY } from './any-ask';

const LIMIT = { timeLimitSeconds: 10 };

async function solved(ask: AllocationAsk, solve: SolveProgram = solveProgram): Promise<Allocation> {
  const found = unwrap(await allocate(ask, solve, LIMIT));
  expect(checkAllocation(ask, found.takes)).toEqual([]);
  return found;
}

const said = ({ takes }: Pick<Allocation, 'takes'>) =>
  takes.map(({ needId, containerId, amount }) => `${needId} ${containerId} ${amount}`);

describe('what an allocation keeps to', () => {
  it('takes a surface from one lot though another would expire sooner, where by hand the lots are mixed', async () => {
    const ask = askOf(
      [needOf({ id: 'n', amount: milligrams(3000) })],
      [
        containerOf({ id: 'a', lotId: 'L1', lastGoodDay: day('2026-12-15') }),
        containerOf({ id: 'b', lotId: 'L2', left: milligrams(4000) }),
      ],
    );
    expect(said(await solved(ask))).toEqual(['n b 3000']);
    expect(said({ takes: firstExpiredByHand(ask) })).toEqual(['n a 1000', 'n b 2000']);
  });

  it('goes on with the lot that a surface has already, though another would expire sooner and is enough', async () => {
    const tins = [
      containerOf({ id: 'x', lotId: 'X', lastGoodDay: day('2027-06-01') }),
      containerOf({ id: 'y', lotId: 'Y', lastGoodDay: day('2027-02-01') }),
    ];
    const need = needOf({ id: 'n', surface: 'river', part: 'A', productIds: ['resin'] });
    const partA = tins.map((tin) => ({ ...tin, part: 'A' as const }));
    const used = (changes = {}) => [
      { surface: 'river', part: 'A' as const, productId: 'resin', lotId: 'X', ...changes },
    ];
    expect(said(await solved(askOf([need], partA)))).toEqual(['n y 1000']);
    expect(said(await solved(askOf([need], partA, { used: used() })))).toEqual(['n x 1000']);
    // Of another surface, part or material it is nothing to this one.
    for (const other of [{ surface: 'leg' }, { part: 'B' }, { productId: 'oil' }])
      expect(said(await solved(askOf([need], partA, { used: used(other) })))).toEqual(['n y 1000']);
    // Nothing is left of it: the surface is of two lots, and that is said and proved.
    const gone = await solved(askOf([need], partA.slice(1), { used: used() }));
    expect(gone).toMatchObject({ status: 'proved', measures: { splitSurfaces: 1, lotChanges: 1 } });
  });

  it('counts a surface that is of two lots already, whether or not anything can be had for it', async () => {
    const used = ['X', 'Y'].map((lotId) => ({ surface: 'river', productId: 'resin', lotId }));
    const need = needOf({ id: 'n', surface: 'river' });
    for (const tins of [[], [containerOf({ id: 'x', lotId: 'X' })], [containerOf({ id: 'z', lotId: 'Z' })]]) {
      const found = await solved(askOf([need], tins, { used }));
      const changes = tins[0]?.lotId === 'Z' ? 2 : 1;
      expect(found).toMatchObject({ status: 'proved', measures: { splitSurfaces: 1, lotChanges: changes } });
    }
  });

  it('is good to the day that counts, and is opened on the day of use', async () => {
    const first = needOf({ id: 'n1', on: day('2026-12-05'), goodTo: day('2026-12-12'), amount: milligrams(400) });
    const last = needOf({ id: 'n2', on: day('2026-12-12'), amount: milligrams(400) });
    const until = (date: string, more = {}) => [containerOf({ id: 'c', lastGoodDay: day(date), ...more })];
    expect((await solved(askOf([first], until('2026-12-12')))).short).toEqual([]);
    const early = askOf([first], until('2026-12-11'));
    expect((await solved(early)).short).toEqual([{ needId: 'n1', amount: 400 }]);
    expect(checkAllocation(early, [{ needId: 'n1', containerId: 'c', amount: milligrams(400) }])).toEqual([
      { code: 'past-limit', needId: 'n1', containerId: 'c' },
    ]);
    expect(firstExpiredByHand(early)).toEqual([]);
    // Opened for the first lift it keeps three days: that is over when the last one is poured.
    const sealed = { sealed: true, openedLife: { count: 3, unit: 'day' as const } };
    const opened = await solved(askOf([first, last], until('2027-06-01', sealed)));
    expect(opened).toMatchObject({ opens: [{ on: '2026-12-05' }], short: [{ needId: 'n2', amount: 400 }] });
  });

  it('uses a limit’s own day and not the day after', async () => {
    const needs = [needOf({ id: 'n', on: day('2026-12-10') })];
    const until = (last: string) => [containerOf({ id: 'c', lastGoodDay: day(last) })];
    expect((await solved(askOf(needs, until('2026-12-10')))).short).toEqual([]);
    expect((await solved(askOf(needs, until('2026-12-09')))).short).toEqual([{ needId: 'n', amount: 1000 }]);
  });

  it('counts an opened life from the first use: good on its last day, not after, so that two tins are opened', async () => {
    const needs = (second: string) => [
      needOf({ id: 'n1', on: day('2026-12-10'), amount: milligrams(400), surface: 'top' }),
      needOf({ id: 'n2', on: day(second), amount: milligrams(400), surface: 'top' }),
    ];
    const tins = ['c1', 'c2'].map((id) => containerOf({ id, sealed: true, openedLife: { count: 5, unit: 'day' } }));
    const within = await solved(askOf(needs('2026-12-15'), tins));
    expect(within.opens).toEqual([{ containerId: 'c1', on: '2026-12-10' }]);
    const after = await solved(askOf(needs('2026-12-16'), tins));
    expect(after.opens.map(({ on }) => on)).toEqual(['2026-12-10', '2026-12-16']);
    // With one tin only the earlier day goes first.
    const one = await solved(askOf(needs('2026-12-16'), tins.slice(0, 1)));
    expect(one.short).toEqual([{ needId: 'n2', amount: 400 }]);
  });

  it('gives what there is to the earlier day', async () => {
    const needs = ['2026-12-20', '2026-12-10'].map((on, nr) =>
      needOf({ id: `n${nr}`, on: day(on), amount: milligrams(700) }),
    );
    const found = await solved(askOf(needs, [containerOf({ id: 'c' })]));
    expect(found.short).toEqual([{ needId: 'n0', amount: 400 }]);
    expect(found.measures.short).toEqual([{ on: '2026-12-20', amount: 400 }]);
    expect(found.status).toBe('proved');
  });

  it('keeps both parts of a batch to one system, even where a mix would give more', async () => {
    const part = (id: string, letter: 'A' | 'B', pairsWith?: string) =>
      needOf({ id, part: letter, productIds: [`x${letter}`, `y${letter}`], pairsWith, surface: 'top' });
    const tin = (id: string, system: string, letter: 'A' | 'B', left: number) =>
      containerOf({
        id,
        productId: `${system}${letter}`,
        systemKey: system,
        part: letter,
        left: milligrams(left),
        lotId: id,
      });
    const ask = askOf(
      [part('a', 'A', 'b'), part('b', 'B')],
      [tin('xa', 'x', 'A', 1000), tin('xb', 'x', 'B', 300), tin('ya', 'y', 'A', 800), tin('yb', 'y', 'B', 1000)],
    );
    const found = await solved(ask);
    expect(said(found)).toEqual(['a ya 800', 'b yb 1000']);
    expect(found.short).toEqual([{ needId: 'a', amount: 200 }]);
  });

  it('takes both parts from one set where the maker demands it', async () => {
    const part = (id: string, letter: 'A' | 'B') =>
      needOf({ id, part: letter, productIds: [letter], pairsWith: id === 'a' ? 'b' : 'a', setDemanded: true });
    const tin = (id: string, letter: 'A' | 'B', setId: string | undefined, lastGoodDay: string) =>
      containerOf({
        id,
        productId: letter,
        systemKey: 's',
        part: letter,
        setId,
        lastGoodDay: day(lastGoodDay),
        lotId: id,
      });
    const tins = [
      tin('a1', 'A', 'S1', '2026-12-12'),
      tin('a2', 'A', 'S2', '2026-12-20'),
      tin('b2', 'B', 'S2', '2026-12-20'),
      tin('b0', 'B', undefined, '2026-12-11'),
    ];
    expect(said(await solved(askOf([part('a', 'A'), part('b', 'B')], tins)))).toEqual(['a a2 1000', 'b b2 1000']);
  });

  it('leaves held and promised stock alone, and what was ruled out', async () => {
    const tins = [
      containerOf({ id: 'held', held: true }),
      containerOf({ id: 'promised', promisedTo: [{ jobName: 'Bench', amount: milligrams(900) }] }),
      containerOf({ id: 'barred' }),
    ];
    const found = await solved(
      askOf([needOf({ id: 'n' })], tins, { barred: [{ needId: 'n', containerId: 'barred' }] }),
    );
    expect(said(found)).toEqual(['n promised 100']);
    expect(found.short).toEqual([{ needId: 'n', amount: 900 }]);
  });

  it('judges a day of use that has passed for today', async () => {
    const tins = [containerOf({ id: 'c', lastGoodDay: addDays(TODAY, -1) })];
    expect((await solved(askOf([needOf({ id: 'n', on: addDays(TODAY, -5) })], tins))).short).toHaveLength(1);
  });

  it('opens the sealed tin that leaves less to waste, then as few as it can', async () => {
    const tins = [
      containerOf({ id: 'big', sealed: true, left: milligrams(5000), openedLife: { count: 7, unit: 'day' } }),
      containerOf({ id: 'small1', sealed: true, left: milligrams(500), openedLife: { count: 7, unit: 'day' } }),
      containerOf({ id: 'small2', sealed: true, left: milligrams(500), openedLife: { count: 7, unit: 'day' } }),
    ];
    expect(said(await solved(askOf([needOf({ id: 'n' })], tins)))).toEqual(['n small1 500', 'n small2 500']);
    // Where nothing is waste, one is opened and not two.
    const keeps = tins.map((tin) => ({ ...tin, openedLife: undefined }));
    expect(said(await solved(askOf([needOf({ id: 'n' })], keeps)))).toEqual(['n big 1000']);
  });

  it('weighs waste by what it cost where every price is known, else by amount', async () => {
    const tins = (price: number | undefined) => [
      containerOf({ id: 'dear', price, left: milligrams(1000), lastGoodDay: day('2026-12-20') }),
      containerOf({ id: 'cheap', price: 100, left: milligrams(1500), lastGoodDay: day('2026-12-15') }),
    ];
    const needs = [needOf({ id: 'n' })];
    expect(said(await solved(askOf(needs, tins(5000))))).toEqual(['n dear 1000']);
    expect(said(await solved(askOf(needs, tins(undefined))))).toEqual(['n cheap 1000']);
  });

  it('answers an ask of nothing, and one with nothing on hand', async () => {
    expect(await solved(askOf([], [containerOf({ id: 'c' })]))).toMatchObject({ status: 'proved', takes: [] });
    const found = await solved(askOf([needOf({ id: 'n' })], []));
    expect(found).toMatchObject({ status: 'proved', short: [{ needId: 'n', amount: 1000 }], solves: 0 });
  });

  it('refuses what cannot be asked', async () => {
    const need = needOf({ id: 'n' });
    const refused = async (ask: AllocationAsk) => allocate(ask, solveProgram, LIMIT);
    expect(await refused(askOf([need, need], []))).toMatchObject({ error: { code: 'same-id-twice', of: 'need' } });
    expect(await refused(askOf([{ ...need, amount: milligrams(0) }], []))).toMatchObject({
      error: { code: 'amount-out-of-range', of: 'need' },
    });
    expect(await refused(askOf([{ ...need, goodTo: day('2026-12-09') }], []))).toMatchObject({
      error: { code: 'good-to-before-use', id: 'n' },
    });
    expect(await refused(askOf([{ ...need, pairsWith: 'x' }], []))).toMatchObject({
      error: { code: 'pair-unknown', pairsWith: 'x' },
    });
    expect(await refused(askOf([need], [containerOf({ id: 'c', left: milligrams(-1) })]))).toMatchObject({
      error: { code: 'amount-out-of-range', of: 'container' },
    });
  });
});

describe('what an allocation is worth when time runs out', () => {
  const ask = askOf(
    [needOf({ id: 'n', amount: milligrams(3000) })],
    [
      containerOf({ id: 'a', lotId: 'L1', lastGoodDay: day('2026-12-15') }),
      containerOf({ id: 'b', lotId: 'L2', left: milligrams(4000) }),
    ],
  );

  it('is what would be taken by hand, with the gap, when there was no time at all', async () => {
    const found = await solved(ask, async () => ({ status: 'out-of-time', bound: -Infinity }));
    expect(said(found)).toEqual(said({ takes: firstExpiredByHand(ask) }));
    expect(found).toMatchObject({ status: 'gap', gap: { measure: 'splitSurfaces', value: 1, least: 0 } });
  });

  it('never calls proved what rests on a bound that was not reached', async () => {
    const found = await solved(ask, async (text, options) => {
      const answer = await solveProgram(text, options);
      return answer.status === 'best' ? { ...answer, status: 'some', bound: answer.bound - 5 } : answer;
    });
    expect(found.status).toBe('gap');
  });

  it('is never worse than by hand, and breaks no rule, however little time all programmes together have', async () => {
    for (const seconds of [0, 0.02, 0.1]) {
      const odd = oddAsk(7);
      const found = await solved(odd, solveWithin(seconds));
      const byHand = measureAllocation(odd, firstExpiredByHand(odd));
      expect(compareMeasures(found.measures, byHand).better).not.toBe('other');
    }
  });
});

describe('amounts to the small unit', () => {
  it('never takes a unit twice, passes no limit, and accounts for every unit asked, in larger asks of odd amounts', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 100_000 }), async (seed) => {
        const ask = oddAsk(seed);
        const found = await solved(ask);
        for (const { id, amount } of ask.needs) {
          const got = found.takes.reduce((sum, take) => sum + (take.needId === id ? take.amount : 0), 0);
          const missing = found.short.find(({ needId }) => needId === id)?.amount ?? 0;
          expect(got + missing).toBe(amount);
        }
        expect(found.status).toBe('proved');
        const byHand = measureAllocation(ask, firstExpiredByHand(ask));
        expect(compareMeasures(found.measures, byHand).better).not.toBe('other');
      }),
      { numRuns: 25 },
    );
  });
});

/** Eight needs and fourteen containers of two materials, weighed to the milligram in kilograms. */
function oddAsk(seed: number): AllocationAsk {
  const next = numbersFrom(seed);
  const upTo = (most: number) => Math.floor(next() * (most + 1));
  const needs = Array.from({ length: 8 }, (_, nr) =>
    needOf({
      id: `n${nr}`,
      on: addDays(TODAY, upTo(30)),
      amount: milligrams(100_003 + upTo(3_000_000)),
      surface: `top ${upTo(3)}`,
      productIds: [nr % 2 ? 'oil' : 'resin'],
    }),
  );
  const containers = Array.from({ length: 14 }, (_, nr) => {
    const sealed = next() < 0.6;
    return containerOf({
      id: `c${nr}`,
      productId: nr % 2 ? 'oil' : 'resin',
      lotId: `L${upTo(2)}`,
      left: milligrams(sealed ? 2_500_000 : 50_021 + upTo(2_000_000)),
      sealed,
      openedLife: sealed ? { count: 14, unit: 'day' } : undefined,
      lastGoodDay: addDays(TODAY, 3 + upTo(60)),
    });
  });
  return askOf(needs, containers, { wasteUntil: addDays(TODAY, 45) });
}
