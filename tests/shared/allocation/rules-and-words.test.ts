import { describe, expect, it } from 'vitest';
import { solveProgram } from '@/app/_server/allocation/solve-program';
import { allocate } from '@/shared/allocation/allocate';
import type { Take } from '@/shared/allocation/allocation-ask';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { compareAllocations } from '@/shared/allocation/compare-allocations';
import { findConflicts } from '@/shared/allocation/find-conflicts';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import { goodUntil } from '@/shared/allocation/good-until';
import { measureAllocation } from '@/shared/allocation/measure-allocation';
import { reasonsForTake } from '@/shared/allocation/reasons-for-take';
import { sayAllocation } from '@/shared/allocation/say-allocation';
import { sayConflict } from '@/shared/allocation/say-conflict';
import { sayDifference } from '@/shared/allocation/say-difference';
import { sayTake } from '@/shared/allocation/say-take';
import { sayTakeReason } from '@/shared/allocation/say-take-reason';
import { surfacesOf } from '@/shared/allocation/surfaces-of';
import { unusedPastLimit } from '@/shared/allocation/unused-past-limit';
import { writeProgram } from '@/shared/allocation/write-program';
import { unwrap } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { day } from '../../support/day';
import { askOf, containerOf, needOf, TODAY } from './any-ask';

const HOW = { today: TODAY };
const take = (needId: string, containerId: string, amount: number): Take => ({
  needId,
  containerId,
  amount: milligrams(amount),
});

describe('the checker finds every broken rule', () => {
  const a = needOf({ id: 'a', part: 'A', productIds: ['A'], pairsWith: 'b', setDemanded: true });
  const b = needOf({ id: 'b', part: 'B', productIds: ['B'], on: day('2026-12-14'), systemKey: 's' });
  const good = { productId: 'A', part: 'A', systemKey: 's', setId: 'S1' } as const;
  const codes = (containers: Parameters<typeof askOf>[1], takes: readonly Take[], barred = false) =>
    checkAllocation(
      askOf([a, b], containers, barred ? { barred: [{ needId: 'a', containerId: 'c' }] } : {}),
      takes,
    ).map(({ code }) => code);
  const tin = (changes: object) => [containerOf({ id: 'c', ...good, ...changes })];

  it.each([
    ['nothing', {}, 1000, []],
    ['another product', { productId: 'X' }, 1000, ['other-product']],
    ['another unit', { unit: 'uL' }, 1000, ['other-product']],
    ['another part', { part: 'B' }, 1000, ['other-part']],
    ['held', { held: true }, 1000, ['held']],
    ['past its limit', { lastGoodDay: day('2026-12-09') }, 1000, ['past-limit']],
    ['more than is left', { left: milligrams(999) }, 1000, ['over-drawn']],
    ['more than is free', { promisedTo: [{ jobName: 'Bench', amount: milligrams(1) }] }, 1000, ['over-drawn']],
    ['more than is asked', { left: milligrams(2000) }, 1001, ['over-met']],
    ['no set', { setId: undefined }, 1000, ['no-set']],
    ['no system', { systemKey: undefined }, 1000, ['mixed-systems']],
    ['nothing of it', {}, 0, ['not-whole']],
  ] as const)('%s', (_, changes, amount, expected) => {
    expect(codes(tin(changes), [{ needId: 'a', containerId: 'c', amount: milligrams(amount) }])).toEqual(expected);
  });

  it('sees across takes: opened lives, systems, sets, the same unit twice, what is not there, what is barred', () => {
    const other = { id: 'd', productId: 'B', part: 'B', systemKey: 's', setId: 'S2' } as const;
    const both = [take('a', 'c', 1000), take('b', 'd', 1000)];
    expect(codes([...tin({}), containerOf(other)], both)).toEqual(['mixed-sets']);
    expect(codes([...tin({}), containerOf({ ...other, systemKey: 't' })], both)).toEqual([
      'other-system',
      'mixed-systems',
      'mixed-sets',
    ]);
    expect(codes(tin({}), [take('a', 'c', 1000)], true)).toEqual(['barred']);
    expect(codes([], [take('x', 'y', 1)])).toEqual(['unknown-need', 'unknown-container']);

    const needs = [needOf({ id: 'n1' }), needOf({ id: 'n2', on: day('2026-12-14') })];
    const aging = (count: number) => [containerOf({ id: 'c', sealed: true, openedLife: { count, unit: 'day' } })];
    const uses = [take('n1', 'c', 500), take('n2', 'c', 500)];
    expect(checkAllocation(askOf(needs, aging(4)), uses)).toEqual([]);
    expect(checkAllocation(askOf(needs, aging(3)), uses)).toEqual([
      { code: 'past-opened-life', needId: 'n2', containerId: 'c' },
    ]);
    expect(checkAllocation(askOf(needs, aging(4)), [...uses, take('n2', 'c', 1)])).toEqual([
      { code: 'over-drawn', containerId: 'c' },
    ]);
  });
});

describe('measures', () => {
  it('end an opened container with the earlier of its limit and its opened life', () => {
    const sealed = { sealed: true, lastGoodDay: day('2026-12-01'), openedLife: { count: 30, unit: 'day' } } as const;
    expect(goodUntil(sealed, day('2026-10-10'))).toBe('2026-11-09');
    expect(goodUntil(sealed, day('2026-11-20'))).toBe('2026-12-01');
    expect(goodUntil({ ...sealed, sealed: false }, day('2026-10-10'))).toBe('2026-12-01');
    expect(goodUntil({ sealed: true }, day('2026-10-10'))).toBeUndefined();
  });

  it('want one lot for needs of one surface and material, if only by way of a third', () => {
    const on = (id: string, productIds: readonly string[], part?: 'A' | 'B') =>
      needOf({ id, productIds, part, surface: 'top' });
    const needs = [
      on('1', ['x']),
      on('2', ['y']),
      on('3', ['x', 'y']),
      on('4', ['x'], 'B'),
      { ...on('5', ['x']), surface: 'leg' },
    ];
    expect(surfacesOf(needs)).toEqual([[0, 1, 2], [3], [4]]);
  });

  it('count as waste what is free, left over and past its limit in time, also for being opened', () => {
    const ask = askOf(
      [needOf({ id: 'n' })],
      [
        containerOf({ id: 'opened', sealed: true, left: milligrams(1600), openedLife: { count: 1, unit: 'week' } }),
        containerOf({ id: 'shut', sealed: true, openedLife: { count: 1, unit: 'week' } }),
        containerOf({ id: 'past', lastGoodDay: day('2026-11-30') }),
        containerOf({ id: 'held', lastGoodDay: day('2026-12-12'), held: true }),
        containerOf({
          id: 'promised',
          lastGoodDay: day('2026-12-31'),
          promisedTo: [{ jobName: 'Bench', amount: milligrams(400) }],
        }),
        containerOf({ id: 'later', lastGoodDay: day('2027-01-01') }),
      ],
    );
    expect(unusedPastLimit(ask, [take('n', 'opened', 1000)])).toEqual([
      { containerId: 'opened', amount: 600, lastGoodDay: '2026-12-17' },
      { containerId: 'promised', amount: 600, lastGoodDay: '2026-12-31' },
    ]);
    expect(measureAllocation(ask, [take('n', 'opened', 1000)])).toMatchObject({ waste: 1200, opened: 1, short: [] });
  });

  it('compare in order, an earlier day’s shortage before everything', () => {
    const needs = [needOf({ id: 'n1' }), needOf({ id: 'n2', on: day('2026-12-11') })];
    const ask = askOf(needs, [containerOf({ id: 'c' }), containerOf({ id: 'd', sealed: true, left: milligrams(300) })]);
    const compared = compareAllocations(ask, [take('n1', 'c', 1000)], [take('n2', 'c', 1000), take('n1', 'd', 300)]);
    expect(compared.better).toBe('one');
    expect(compared.differences.slice(0, 1)).toEqual([{ measure: 'short', on: '2026-12-10', one: 0, other: 700 }]);
    expect(compared.differences.map(({ measure }) => measure)).toContain('opened');
    expect(compareAllocations(ask, [], []).better).toBe('alike');
  });
});

describe('first expired, first out, by hand', () => {
  it('takes what expires first, opened before sealed, the fuller first, then by label', () => {
    const ask = askOf(
      [needOf({ id: 'n', amount: milligrams(3500) })],
      [
        containerOf({ id: 'keeps' }),
        containerOf({ id: 'sealed', lastGoodDay: day('2026-12-20'), sealed: true }),
        containerOf({ id: 'less', lastGoodDay: day('2026-12-20'), left: milligrams(500) }),
        containerOf({ id: 'more', lastGoodDay: day('2026-12-20') }),
        containerOf({ id: 'first', lastGoodDay: day('2026-12-15') }),
      ],
    );
    expect(firstExpiredByHand(ask).map((one) => `${one.containerId} ${one.amount}`)).toEqual([
      'first 1000',
      'more 1000',
      'less 500',
      'sealed 1000',
    ]);
  });
});

describe('programmes as text', () => {
  it('are in the CPLEX-LP form, on short lines', () => {
    const terms = Array.from({ length: 20 }, (_, nr) => ({ name: `x${nr}`, times: nr - 3 }));
    const text = writeProgram({
      minimise: terms,
      rows: [{ terms: terms.slice(0, 2), sense: '>=', bound: 2.5 }],
      most: new Map([['x0', 4]]),
      whole: new Set(['x0']),
    });
    expect(text.startsWith('Minimize\n obj: - 3 x0 - 2 x1 - 1 x2 + 0 x3')).toBe(true);
    expect(text).toContain('Subject To\n r0: - 3 x0 - 2 x1 >= 2.5\nBounds\n 0 <= x0 <= 4\nGeneral\n x0\nEnd\n');
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThan(510);
  });
});

describe('words', () => {
  const needs = [
    needOf({ id: 'n1', jobName: 'Oak table', what: 'lift 1', amount: milligrams(600_000), surface: 'top' }),
    needOf({
      id: 'n2',
      jobName: 'Oak table',
      what: 'lift 2',
      amount: milligrams(600_000),
      surface: 'top',
      on: day('2026-12-12'),
    }),
  ];
  const containers = [
    containerOf({
      id: 'c1',
      label: 'T-1',
      left: milligrams(700_000),
      lastGoodDay: day('2026-12-20'),
      sealed: true,
      lotWords: 'lot 7',
    }),
    containerOf({ id: 'c2', label: 'T-2', left: milligrams(400_000), held: true }),
  ];
  const ask = askOf(needs, containers);

  it('say what is short, what is opened and that it is proved', async () => {
    const found = unwrap(await allocate(ask, solveProgram, { timeLimitSeconds: 10 }));
    expect(sayAllocation(ask, found, HOW)).toEqual([
      'Oak table, lift 2: 500 g short on 12 Dec.',
      'To open: T-1 on 10 Dec.',
      'Proved: no other way is better.',
    ]);
    const [first] = found.takes;
    if (!first) throw new Error('Something is taken.');
    expect(sayTake(ask, first, HOW)).toBe('Take 600 g from T-1, lot 7, shelf 1.');
    expect(reasonsForTake(ask, found.takes, first).map((reason) => sayTakeReason(ask, reason, HOW))).toEqual([
      'Nothing else on hand will do for it.',
      'Unused, it would pass its limit on 20 Dec.',
      'It is opened for this, on 10 Dec.',
      'Keeps the surface to one lot, with Oak table, lift 2.',
      'It is used up.',
    ]);
    const conflicts = await findConflicts(ask, ['n2'], solveProgram, { timeLimitSeconds: 10 });
    expect(conflicts.map((one) => sayConflict(ask, one, HOW))).toEqual([
      [
        'These cannot all be had: Oak table, lift 1 (10 Dec) and Oak table, lift 2 (12 Dec).',
        '1.2 kg wanted, 700 g free that could serve.',
        'T-2 is held.',
      ],
    ]);
  });

  it('say what is wasted, and what is not proved', async () => {
    const plenty = askOf(needs.slice(0, 1), containers);
    const found = unwrap(
      await allocate(plenty, async () => ({ status: 'out-of-time', bound: 0 }), { timeLimitSeconds: 1 }),
    );
    expect(sayAllocation(plenty, found, HOW)).toEqual([
      'Everything can be had.',
      'Will pass its limit unused: 100 g in T-1 (to 20 Dec).',
      'To open: T-1 on 10 Dec.',
      'Time ran out: another way may be better in waste.',
    ]);
  });

  it('say how two allocations differ', () => {
    expect(sayDifference({ measure: 'opened', one: 3, other: 4 }, HOW)).toBe('1 more container opened.');
    expect(sayDifference({ measure: 'splitSurfaces', one: 3, other: 1 }, HOW)).toBe(
      '2 fewer surfaces of more than one lot.',
    );
    expect(sayDifference({ measure: 'short', on: day('2026-12-12'), one: 0, other: 5 }, HOW)).toBe(
      'More is short on 12 Dec.',
    );
  });
});
