import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { assess } from '@/shared/shelf-life/assess';
import { judge } from '@/shared/shelf-life/judge';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';
import { HOLD_STATES } from '@/shared/shelf-life/types/lot-facts';
import { POLICY_KINDS } from '@/shared/shelf-life/types/policy';
import { PURPOSES } from '@/shared/shelf-life/types/verdict';
import {
  candidate,
  container,
  day,
  input,
  inspection,
  lot,
  policy,
  printed,
  TODAY,
  USE_DAY,
} from '@/tests/shared/shelf-life/fixtures';

type Tin = { id: string; left?: number; good?: string; lotId?: string; opened?: boolean; rest?: Partial<Candidate> };

const tin = ({ id, left = 500, good = '2027-12-31', lotId = 'lot-1', opened = false, rest = {} }: Tin): Candidate => ({
  ...candidate({
    policy: { openedLife: { count: 5, unit: 'year' }, openedLifeBasis: 'label' },
    lot: { id: lotId, bestBefore: printed(good) },
    container: { id, label: id, left, opened: opened ? { on: day('2026-11-01'), sureness: 'known' } : undefined },
  }),
  ...rest,
});

const ask = (candidates: Candidate[], asked?: number, more: Partial<Parameters<typeof suggestContainers>[0]> = {}) =>
  suggestContainers({
    candidates,
    asked,
    dayOfUse: USE_DAY,
    today: TODAY,
    purpose: 'client',
    colourShows: false,
    ...more,
  });
const takes = (suggestion: ReturnType<typeof ask>) => suggestion.containers.map((one) => [one.label, one.take]);

describe('suggestContainers: the order', () => {
  it('takes the first to expire that still reaches the day, and only as much as is asked', () => {
    const answer = ask([tin({ id: 'b', good: '2027-09-01', left: 600 }), tin({ id: 'a', good: '2027-05-01' })], 900);
    expect(takes(answer)).toEqual([
      ['a', 500],
      ['b', 400],
    ]);
    expect(answer).toMatchObject({ reaches: true, why: 'first-to-expire', withThis: 0 });
  });

  it('puts Use before Care', () => {
    expect(takes(ask([tin({ id: 'near', good: '2026-12-25' }), tin({ id: 'far' })], 500))).toEqual([['far', 500]]);
  });

  it('puts opened before sealed when they end on one day, and sealed first when it ends sooner', () => {
    const opened = tin({ id: 'opened', opened: true, good: '2027-06-01' });
    expect(takes(ask([tin({ id: 'a-sealed', good: '2027-06-01' }), opened], 100))).toEqual([['opened', 100]]);
    expect(takes(ask([tin({ id: 'a-sealed', good: '2027-05-01' }), opened], 100))).toEqual([['a-sealed', 100]]);
  });

  it('takes the fuller first, then goes by label, and one without a limit last', () => {
    const keeps = tin({ id: 'a', rest: { policy: policy({ kind: 'keeps' }), lot: lot() } });
    const all = [keeps, tin({ id: 'c' }), tin({ id: 'b' }), tin({ id: 'd', left: 600 })];
    expect(ask(all, 2100).containers.map((one) => one.label)).toEqual(['d', 'b', 'c', 'a']);
  });

  it('offers the single best one whole when no amount is asked', () => {
    expect(takes(ask([tin({ id: 'b' }), tin({ id: 'a', left: 70, good: '2027-03-01' })]))).toEqual([['a', 70]]);
  });
});

describe('suggestContainers: what is never offered', () => {
  it.each([
    ['past', tin({ id: 'x', good: '2026-12-18' })],
    ['unknown', tin({ id: 'x', rest: { lot: lot() } })],
    ['failed', tin({ id: 'x', rest: { inspections: [inspection({ passed: false })] } })],
    ['recalled', tin({ id: 'x', rest: { lot: lot({ hold: 'recalled' }) } })],
    ['gelled', tin({ id: 'x', rest: { container: container({ conditions: ['gelled'] }) } })],
    ['empty', tin({ id: 'x', left: 0 })],
  ])('one that is %s, for any purpose', (_, bad) => {
    for (const purpose of PURPOSES) {
      expect(ask([bad], 10, { purpose })).toEqual({ containers: [], withThis: 0, reaches: false, why: 'none-good' });
    }
  });

  it('one whose limit ran out before today, for a day of use that was before it', () => {
    const gone = tin({ id: 'gone', good: '2026-11-20' });
    const good = tin({ id: 'good', good: '2027-05-01' });
    expect(takes(ask([gone, good], 10, { dayOfUse: addDays(TODAY, -20) }))).toEqual([['good', 10]]);
  });

  it('a part of another system than the one in hand', () => {
    const partB = (id: string, systemId: string) =>
      tin({ id, rest: { policy: policy({ system: { id: systemId, name: systemId, part: 'B' } }) } });
    const pairedWith = { systemId: 'deep', systemName: 'Deep', part: 'A', label: 'T-02' } as const;
    expect(takes(ask([partB('a', 'coat'), partB('b', 'deep')], 10, { pairedWith }))).toEqual([['b', 10]]);
  });

  it('the same container twice', () => {
    expect(takes(ask([tin({ id: 'a' }), tin({ id: 'a' })], 900))).toEqual([['a', 500]]);
  });
});

describe('suggestContainers: same lot where colour shows', () => {
  const first = tin({ id: 'a', lotId: 'lot-1', good: '2027-03-01' });
  const second = [tin({ id: 'b', lotId: 'lot-2' }), tin({ id: 'c', lotId: 'lot-2' })];

  it('takes all of one lot that can give it, though another expires sooner', () => {
    const answer = ask([first, ...second], 900, { colourShows: true });
    expect(takes(answer)).toEqual([
      ['b', 500],
      ['c', 400],
    ]);
    expect(answer.why).toBe('one-lot');
    expect(takes(ask([first, ...second], 900))).toEqual([
      ['a', 500],
      ['b', 400],
    ]);
  });

  it('keeps to the job’s own lot when it can give it', () => {
    expect(takes(ask([first, ...second], 400, { colourShows: true, lotId: 'lot-2' }))).toEqual([['b', 400]]);
  });

  it('mixes only when no one lot can, the own lot first, and says so', () => {
    const answer = ask([first, ...second], 1200, { colourShows: true, lotId: 'lot-2' });
    expect(takes(answer)).toEqual([
      ['b', 500],
      ['c', 500],
      ['a', 200],
    ]);
    expect(answer).toMatchObject({ reaches: true, why: 'lots-mixed' });
  });

  it('counts another lot as a mix when some of the own lot is already in use', () => {
    const answer = ask(second, 600, { colourShows: true, lotId: 'lot-1', lotInUse: true });
    expect(answer).toMatchObject({ reaches: true, why: 'lots-mixed' });
  });

  it('finishes the lot already in use before it opens another, though the other could give the whole', () => {
    const answer = ask([tin({ id: 'd', left: 100 }), ...second], 600, {
      colourShows: true,
      lotId: 'lot-1',
      lotInUse: true,
    });
    expect(takes(answer)).toEqual([
      ['d', 100],
      ['b', 500],
    ]);
    expect(answer.why).toBe('lots-mixed');
  });
});

describe('suggestContainers: not enough', () => {
  it('offers all there is and does not say it reaches', () => {
    expect(ask([tin({ id: 'a' })], 501)).toMatchObject({
      reaches: false,
      why: 'not-enough',
      containers: [{ take: 500 }],
    });
  });

  it('throws on an amount that is no whole count of at least 1', () => {
    for (const asked of [0, -1, 1.5, Number.NaN]) expect(() => ask([], asked)).toThrow(RangeError);
  });
});

describe('judge: instead', () => {
  const others = [tin({ id: 'b' }), tin({ id: 'c', good: '2027-09-01' })];

  it('offers other containers for a Stop', () => {
    const verdict = judge(input({ container: { conditions: ['gelled'] } }, { asked: 600, others }));
    expect(verdict.instead?.containers.map((one) => [one.label, one.take])).toEqual([
      ['c', 500],
      ['b', 100],
    ]);
  });

  it('takes all of one that is short and covers the rest', () => {
    const verdict = judge(input({ container: { left: 300 } }, { asked: 900, others }));
    expect(verdict.instead).toMatchObject({ withThis: 300, reaches: true });
    expect(verdict.instead?.containers.map((one) => one.take)).toEqual([500, 100]);
  });

  it('where colour shows, leaves a short one for another lot that can give the whole', () => {
    const lot2 = [tin({ id: 'b', lotId: 'lot-2' }), tin({ id: 'c', lotId: 'lot-2' })];
    const facts = { policy: { colourShows: true }, container: { left: 300 } };
    expect(judge(input(facts, { asked: 900, others: lot2 })).instead).toMatchObject({ withThis: 0, why: 'one-lot' });
    const own = [...lot2, tin({ id: 'd', lotId: 'lot-1', left: 600 })];
    expect(judge(input(facts, { asked: 900, others: own })).instead).toMatchObject({
      withThis: 300,
      why: 'one-lot',
      containers: [{ label: 'd', take: 600 }],
    });
    expect(judge(input(facts, { asked: 1200, others: lot2 })).instead).toMatchObject({
      withThis: 300,
      why: 'lots-mixed',
    });
  });

  it('offers instead of another Care only what is Use alone', () => {
    const facts = { container: { conditions: ['haze'] } } as const;
    expect(judge(input(facts, { asked: 600, others })).instead?.reaches).toBe(true);
    const near = [tin({ id: 'b', good: '2026-12-25' })];
    expect(judge(input(facts, { asked: 100, others: near })).instead).toBeUndefined();
  });

  it('offers nothing for a Use, nothing without others, and never itself', () => {
    expect(judge(input({}, { asked: 100, others })).instead).toBeUndefined();
    expect(judge(input({ container: { conditions: ['gelled'] } }, { asked: 100 })).instead).toBeUndefined();
    const self = [tin({ id: 'tin-1' })];
    expect(judge(input({ container: { conditions: ['gelled'] } }, { asked: 100, others: self })).instead?.why).toBe(
      'none-good',
    );
  });

  it('replaces a part only by the same part of its system', () => {
    const system = { id: 'deep', name: 'Deep', part: 'A' } as const;
    const partB = tin({ id: 'b', rest: { policy: policy({ system: { ...system, part: 'B' } }) } });
    const partA = tin({ id: 'c', rest: { policy: policy({ system }) } });
    const verdict = judge(
      input({ policy: { system }, container: { conditions: ['gelled'] } }, { asked: 10, others: [partB, partA] }),
    );
    expect(verdict.instead?.containers.map((one) => one.label)).toEqual(['c']);
  });
});

const someDay = fc.integer({ min: -500, max: 700 }).map((n) => addDays(TODAY, n));
const label = fc.record({
  date: someDay,
  precision: fc.constantFrom('day', 'month', 'year'),
  confirmed: fc.boolean(),
});
const life = fc.record({
  count: fc.integer({ min: 1, max: 24 }),
  unit: fc.constantFrom('day', 'week', 'month', 'year'),
});
const mostly = <T>(usual: T, ...others: readonly T[]) =>
  fc.oneof({ arbitrary: fc.constant(usual), weight: 6 }, { arbitrary: fc.constantFrom(...others), weight: 1 });

const anyCandidate: fc.Arbitrary<Candidate> = fc.record({
  policy: fc.record({
    kind: fc.constantFrom(...POLICY_KINDS),
    statedLife: fc.option(life, { nil: undefined }),
    statedLifeBasis: fc.constantFrom('label', 'data-sheet', 'house-default'),
    openedLife: fc.option(life, { nil: undefined }),
    openedLifeBasis: fc.constantFrom('label', 'data-sheet', 'house-default'),
    careWindowDays: fc.integer({ min: 0, max: 60 }),
    freezingRuins: fc.boolean(),
    colourShows: fc.boolean(),
  }),
  lot: fc.record({
    id: fc.constantFrom('lot-1', 'lot-2', 'lot-3'),
    code: fc.constant('L'),
    madeOn: fc.option(label, { nil: undefined }),
    bestBefore: fc.option(label, { nil: undefined }),
    useBy: fc.option(label, { nil: undefined }),
    hold: mostly(...HOLD_STATES),
  }),
  container: fc.record({
    id: fc.integer({ min: 1, max: 12 }).map((n) => `tin-${n}`),
    label: fc.integer({ min: 1, max: 12 }).map((n) => `T-${n}`),
    left: fc.integer({ min: 0, max: 2000 }),
    opened: fc.option(fc.record({ on: someDay, sureness: fc.constantFrom('known', 'guessed') }), { nil: undefined }),
    conditions: fc.subarray([...CONDITIONS], { maxLength: 1 }),
    hold: mostly(...HOLD_STATES),
    statedOpenedLife: fc.option(life, { nil: undefined }),
  }),
  inspections: fc.array(
    fc.record({
      id: fc.string({ minLength: 4, maxLength: 4 }),
      on: someDay,
      passed: fc.boolean(),
      validUntil: fc.option(someDay, { nil: undefined }),
      kind: fc.constantFrom('inspection', 'test-pour'),
      scope: fc.constantFrom('lot', 'container'),
      containerId: fc.integer({ min: 1, max: 12 }).map((n) => `tin-${n}`),
    }),
    { maxLength: 3 },
  ),
});

describe('properties over any containers', () => {
  const job = fc.record({
    candidates: fc.array(anyCandidate, { maxLength: 8 }),
    asked: fc.option(fc.integer({ min: 1, max: 4000 }), { nil: undefined }),
    dayOfUse: fc.integer({ min: 0, max: 120 }).map((n) => addDays(TODAY, n)),
    purpose: fc.constantFrom(...PURPOSES),
    colourShows: fc.boolean(),
    lotId: fc.constantFrom('lot-1', 'lot-2', undefined),
  });

  it('never suggests a Stop or one that ends before the day, never more than is left, each container once', () => {
    fc.assert(
      fc.property(job, (given) => {
        const answer = suggestContainers({ ...given, today: TODAY });
        const byId = new Map(given.candidates.map((one) => [one.container.id, one]));
        for (const one of answer.containers) {
          const from = byId.get(one.containerId);
          expect(from).toBeDefined();
          if (!from) continue;
          const verdict = assess({ ...from, dayOfUse: given.dayOfUse, today: TODAY, purpose: given.purpose });
          expect(verdict.word).not.toBe('stop');
          expect(verdict.daysLeft ?? 0).toBeGreaterThanOrEqual(0);
          expect(one.word).toBe(verdict.word);
          expect(Number.isInteger(one.take) && one.take >= 1 && one.take <= from.container.left).toBe(true);
        }
        expect(new Set(answer.containers.map((one) => one.containerId)).size).toBe(answer.containers.length);
      }),
      { numRuns: 400 },
    );
  });

  it('sums to exactly what was asked when it says it reaches, to less when not, and leaves no good one out then', () => {
    fc.assert(
      fc.property(job, (given) => {
        const { asked } = given;
        const answer = suggestContainers({ ...given, today: TODAY });
        if (asked === undefined) return;
        const sum = answer.containers.reduce((total, one) => total + one.take, 0);
        if (answer.reaches) expect(sum).toBe(asked);
        else {
          expect(sum).toBeLessThan(asked);
          const everything = suggestContainers({ ...given, colourShows: false, today: TODAY });
          expect(everything.reaches).toBe(false);
        }
        const lots = new Set(answer.containers.map((one) => one.lotId));
        if (answer.why === 'one-lot') expect(lots.size).toBe(1);
        if (answer.why === 'lots-mixed') expect(lots.size).toBeGreaterThan(1);
      }),
      { numRuns: 400 },
    );
  });

  it('does not depend on the order in which the containers are given', () => {
    fc.assert(
      fc.property(job, (given) => {
        const candidates = [...new Map(given.candidates.map((one) => [one.container.id, one])).values()];
        const there = suggestContainers({ ...given, candidates, today: TODAY });
        expect(suggestContainers({ ...given, candidates: [...candidates].reverse(), today: TODAY })).toEqual(there);
      }),
    );
  });
});

describe('properties over any verdict', () => {
  const job = fc.record({
    one: anyCandidate,
    dayOfUse: fc.integer({ min: 0, max: 200 }).map((n) => addDays(TODAY, n)),
    purpose: fc.constantFrom(...PURPOSES),
  });

  it('the word is the worst weight, the order worst first, the governing limit the earliest that counts', () => {
    fc.assert(
      fc.property(job, ({ one, ...rest }) => {
        const verdict = judge({ ...one, ...rest, today: TODAY });
        const rank = { stop: 0, care: 1, note: 2 };
        const weights = verdict.reasons.map((reason) => rank[reason.weight]);
        expect(weights).toEqual([...weights].sort());
        expect(verdict.word).toBe(weights.includes(0) ? 'stop' : weights.includes(1) ? 'care' : 'use');
        const counted = verdict.limits.filter((limit) => limit.effective).map((limit) => limit.lastGoodDay);
        expect(verdict.governing?.lastGoodDay).toBe(counted.sort()[0]);
        for (const limit of verdict.limits) expect(limit.effective).toBe(limit.supersededBy === undefined);
        expect(verdict.override === 'not-needed').toBe(verdict.word !== 'stop');
      }),
      { numRuns: 400 },
    );
  });

  it('a client’s piece is never judged more kindly than an own one, nor a later day than an earlier', () => {
    const rank = { use: 0, care: 1, stop: 2 };
    fc.assert(
      fc.property(job, fc.integer({ min: 1, max: 100 }), ({ one, dayOfUse }, later) => {
        const word = (purpose: 'client' | 'own', on = dayOfUse) =>
          rank[judge({ ...one, dayOfUse: on, purpose, today: TODAY }).word];
        expect(word('client')).toBeGreaterThanOrEqual(word('own'));
        expect(word('client', addDays(dayOfUse, later))).toBeGreaterThanOrEqual(word('client'));
      }),
      { numRuns: 400 },
    );
  });

  it('nothing ever carries a printed use-by past its own day, nor a client past a limit that counts', () => {
    fc.assert(
      fc.property(job, ({ one, dayOfUse }) => {
        const verdict = judge({ ...one, dayOfUse, purpose: 'client', today: TODAY });
        const useBy = verdict.limits.find((limit) => limit.basis === 'use-by');
        if (useBy) expect(useBy.effective).toBe(true);
        if (verdict.word !== 'stop') expect(verdict.daysLeft ?? 0).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 400 },
    );
  });
});
