import { describe, expect, it } from 'vitest';
import { solveProgram } from '@/app/_server/allocation/solve-program';
import { allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { canAllBeHad } from '@/shared/allocation/can-all-be-had';
import { explainChoice } from '@/shared/allocation/explain-choice';
import { findConflicts } from '@/shared/allocation/find-conflicts';
import { reasonsForTake } from '@/shared/allocation/reasons-for-take';
import { unwrap } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { day } from '../../support/day';
import { askOf, containerOf, needOf, smallAsk } from './any-ask';

const LIMIT = { timeLimitSeconds: 10 };
const solved = async (ask: AllocationAsk) => unwrap(await allocate(ask, solveProgram, LIMIT));

describe('why this tin', () => {
  const needs = [
    needOf({ id: 'n1', on: day('2026-12-05'), amount: milligrams(600), surface: 'top' }),
    needOf({ id: 'n2', on: day('2026-12-08'), amount: milligrams(400), surface: 'top' }),
  ];
  const old = containerOf({ id: 'old', lastGoodDay: day('2026-12-20'), sealed: true });
  const fresh = containerOf({ id: 'new', lastGoodDay: day('2027-03-01'), sealed: true });

  it('names what it rests on: first to expire, saved from waste, opened for it, one lot, used up', async () => {
    const ask = askOf(needs, [old, fresh]);
    const { takes } = await solved(ask);
    const [first, second] = takes;
    expect(first && reasonsForTake(ask, takes, first)).toEqual([
      { code: 'first-to-expire', lastGoodDay: '2026-12-20', next: 'new' },
      { code: 'would-be-wasted', lastGoodDay: '2026-12-20' },
      { code: 'opened-here', on: '2026-12-05' },
      { code: 'one-lot', withNeedIds: ['n2'] },
      { code: 'emptied' },
    ]);
    expect(second && reasonsForTake(ask, takes, second)).toContainEqual({
      code: 'opened-before',
      on: '2026-12-05',
      needId: 'n1',
    });
  });

  it('says that what expires sooner goes elsewhere, and that nothing else will do', async () => {
    const apart = needs.map((need) => ({ ...need, surface: need.id, amount: milligrams(1000) }));
    const ask = askOf(apart, [
      { ...old, sealed: false },
      { ...fresh, sealed: false },
    ]);
    const { takes } = await solved(ask);
    const late = takes.find(({ containerId }) => containerId === 'new');
    const codes = late && reasonsForTake(ask, takes, late);
    expect(codes).toContainEqual({
      code: 'sooner-ones-are-taken',
      containerIds: ['old'],
      needIds: [late?.needId === 'n1' ? 'n2' : 'n1'],
    });
    const alone = askOf(needs.slice(0, 1), [old]);
    const only = await solved(alone);
    expect(only.takes[0] && reasonsForTake(alone, only.takes, only.takes[0])[0]).toEqual({ code: 'only-one-that-can' });
  });

  it('tells what another choice would cost, and that a sister of the same lot costs nothing', async () => {
    const ask = askOf(needs, [old, fresh]);
    const { takes } = await solved(ask);
    const cost = unwrap(await explainChoice(ask, takes, { needId: 'n1', containerId: 'old' }, solveProgram, LIMIT));
    expect(cost.without.takes).toEqual([{ needId: 'n1', containerId: 'new', amount: 600 }]);
    expect(cost.without.comparison.better).toBe('one');
    expect(cost.without.comparison.differences[0]).toMatchObject({ measure: 'waste', one: 0, other: 600 });
    expect(cost.without.status).toBe('proved');

    const sister = askOf(needs, [old, { ...old, id: 'sister', label: 'T-sister' }]);
    const one = (await solved(sister)).takes;
    const take = one[0];
    if (!take) throw new Error('Something is taken.');
    const same = unwrap(await explainChoice(sister, one, take, solveProgram, LIMIT));
    expect(same.without.movedNeedIds).toEqual([take.needId === 'n1' ? 'n2' : 'n1']);
    expect(same.without.comparison.better).toBe('alike');
  });

  it('is asked only of what was taken', async () => {
    const ask = askOf(needs, [old]);
    const { takes } = await solved(ask);
    const refused = await explainChoice(ask, takes, { needId: 'n1', containerId: 'new' }, solveProgram, LIMIT);
    expect(refused).toEqual({ ok: false, error: { code: 'not-taken' } });
  });

  it('never finds a choice without the container better than the one with it', async () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const ask = smallAsk(seed);
      const { takes } = await solved(ask);
      for (const take of takes.slice(0, 2)) {
        const { without } = unwrap(await explainChoice(ask, takes, take, solveProgram, LIMIT));
        expect({ seed, better: without.comparison.better }).not.toEqual({ seed, better: 'other' });
      }
    }
  });
});

describe('what cannot be had together', () => {
  it('is the fewest needs, with what they want, what there is and every limit', async () => {
    const needs = [
      needOf({ id: 'n1', on: day('2026-12-05'), amount: milligrams(800) }),
      needOf({ id: 'n2', on: day('2026-12-06'), amount: milligrams(700) }),
      needOf({ id: 'n3', on: day('2026-12-20'), amount: milligrams(500) }),
      needOf({ id: 'other', productIds: ['oil'], amount: milligrams(10) }),
    ];
    const containers = [
      containerOf({ id: 'c1', lastGoodDay: day('2026-12-10') }),
      containerOf({ id: 'c2', lastGoodDay: day('2026-12-01') }),
      containerOf({ id: 'c3', held: true }),
      containerOf({ id: 'c4', promisedTo: [{ jobName: 'Bench', amount: milligrams(1000) }] }),
      containerOf({ id: 'oil', productId: 'oil' }),
      containerOf({ id: 'c5', sealed: true, left: milligrams(500), lastGoodDay: day('2027-01-01') }),
    ];
    const ask = askOf(needs, containers);
    const { short } = await solved(ask);
    const [conflict, ...more] = await findConflicts(
      ask,
      short.map(({ needId }) => needId),
      solveProgram,
      LIMIT,
    );
    expect(more).toEqual([]);
    // 800 and 700 leave nothing of the 1500 that are good on 5 and 6 Dec, and c1 is past its limit by the 20th.
    expect(conflict?.needIds).toEqual(['n1', 'n2', 'n3']);
    expect(conflict?.totals).toEqual([{ part: undefined, unit: 'mg', wanted: 2000, free: 1500 }]);
    expect(conflict?.limits).toEqual([
      { containerId: 'c1', needIds: ['n3'], bar: { code: 'past-limit', lastGoodDay: '2026-12-10' } },
      { containerId: 'c2', needIds: ['n1', 'n2', 'n3'], bar: { code: 'past-limit', lastGoodDay: '2026-12-01' } },
      { containerId: 'c3', needIds: ['n1', 'n2', 'n3'], bar: { code: 'held' } },
      { containerId: 'c4', needIds: ['n1', 'n2', 'n3'], bar: { code: 'promised', jobNames: ['Bench'] } },
    ]);
    expect(conflict?.isSmallest).toBe(true);
  });

  it('finds a conflict of opened lives that no count of amounts would show', async () => {
    const needs = ['2026-12-05', '2026-12-30'].map((on, nr) =>
      needOf({ id: `n${nr}`, on: day(on), amount: milligrams(100) }),
    );
    const openedLife = { count: 10, unit: 'day' } as const;
    const ask = askOf(needs, [containerOf({ id: 'c', sealed: true, openedLife })]);
    const [conflict] = await findConflicts(ask, ['n1'], solveProgram, LIMIT);
    expect(conflict).toMatchObject({
      needIds: ['n0', 'n1'],
      limits: [{ containerId: 'c', needIds: ['n0', 'n1'], bar: { code: 'opened-life', openedLife } }],
    });
  });

  it('is smallest: without any one of its needs the rest can be met, in every small ask that is short', async () => {
    let found = 0;
    for (let seed = 1; seed <= 150; seed += 1) {
      const ask = smallAsk(seed);
      const { short } = await solved(ask);
      const conflicts = await findConflicts(
        ask,
        short.map(({ needId }) => needId),
        solveProgram,
        LIMIT,
      );
      expect({ seed, some: conflicts.length > 0 }).toEqual({ seed, some: short.length > 0 });
      for (const { needIds } of conflicts) {
        found += 1;
        const those = ask.needs.filter(({ id }) => needIds.includes(id));
        expect(await canAllBeHad({ ...ask, needs: those }, solveProgram, LIMIT)).toBe('no');
        for (const one of those) {
          const rest = { ...ask, needs: those.filter((need) => need !== one) };
          expect({ seed, can: await canAllBeHad(rest, solveProgram, LIMIT) }).toEqual({ seed, can: 'yes' });
          const alone = unwrap(
            await allocate(
              { ...rest, needs: rest.needs.map((need) => ({ ...need, pairsWith: undefined })) },
              solveProgram,
              LIMIT,
            ),
          );
          if (!ask.needs.some(({ pairsWith }) => pairsWith)) expect(alone.short).toEqual([]);
        }
      }
    }
    expect(found).toBeGreaterThan(30);
  });

  it('says so when time ran out before the set was shown to be smallest', async () => {
    const ask = askOf(
      ['a', 'b'].map((id) => needOf({ id, amount: milligrams(900) })),
      [containerOf({ id: 'c' })],
    );
    const [conflict] = await findConflicts(ask, ['b'], async () => ({ status: 'out-of-time', bound: 0 }), LIMIT);
    expect(conflict?.isSmallest).toBe(false);
  });
});
