import { describe, expect, it } from 'vitest';
import { judge } from '@/shared/shelf-life/judge';
import { codes, day, input, inspection, printed, TODAY, USE_DAY } from '@/tests/shared/shelf-life/fixtures';

const undated = { bestBefore: undefined };
const past = { bestBefore: printed('2026-12-12') };
const A = { id: 'sys-1', name: 'Deep', part: 'A' } as const;
const pair = (part: 'A' | 'B', systemId = 'sys-1') => ({ systemId, systemName: 'Deep', part, label: 'T-02' });

describe('Stop', () => {
  it.each(['on-hold', 'quarantine', 'recalled'] as const)('Stop: the lot is %s, for every purpose', (hold) => {
    for (const purpose of ['client', 'own', 'test'] as const) {
      const verdict = judge(input({ lot: { hold } }, { purpose }));
      expect(verdict.word).toBe('stop');
      expect(verdict.reasons).toEqual([{ code: hold, weight: 'stop', scope: 'lot' }]);
    }
  });

  it.each(['on-hold', 'quarantine', 'recalled'] as const)('Stop: the container is %s', (hold) => {
    const verdict = judge(input({ container: { hold } }, { purpose: 'test' }));
    expect(verdict.word).toBe('stop');
    expect(verdict.reasons).toEqual([{ code: hold, weight: 'stop', scope: 'container' }]);
  });

  it.each(['gelled', 'skinned-through'] as const)('Stop: %s, for every purpose', (condition) => {
    for (const purpose of ['client', 'own', 'test'] as const) {
      const verdict = judge(input({ container: { conditions: [condition] } }, { purpose }));
      expect([verdict.word, codes(verdict)]).toEqual(['stop', [condition]]);
    }
  });

  it('Stop: frozen where freezing ruins', () => {
    const verdict = judge(
      input({ policy: { freezingRuins: true }, container: { conditions: ['frozen'] } }, { purpose: 'own' }),
    );
    expect([verdict.word, codes(verdict)]).toEqual(['stop', ['frozen-ruined']]);
  });

  it('Stop: past the governing limit for a client job', () => {
    const verdict = judge(input({ lot: past }));
    expect(verdict.word).toBe('stop');
    expect(verdict.daysLeft).toBe(-7);
    expect(verdict.reasons).toMatchObject([{ code: 'past-limit', weight: 'stop', daysPast: 7 }]);
  });

  it('Stop: a house default that is past stops a client job too, and says it is a default', () => {
    const verdict = judge(
      input({
        policy: { statedLife: { count: 12, unit: 'month' } },
        lot: { ...undated, madeOn: printed('2025-06-01') },
      }),
    );
    expect(verdict.word).toBe('stop');
    expect(codes(verdict)).toEqual(['past-limit', 'house-default']);
  });

  it('Stop: each limit that is past is a reason, the longest past first', () => {
    const verdict = judge(
      input({
        policy: { openedLife: { count: 1, unit: 'month' } },
        lot: past,
        container: { opened: { on: day('2026-09-01'), sureness: 'known' } },
      }),
    );
    expect(verdict.reasons.filter((one) => one.code === 'past-limit')).toMatchObject([
      { limit: { basis: 'opened-life' }, daysPast: 79 },
      { limit: { basis: 'best-before' }, daysPast: 7 },
    ]);
  });

  it('Stop: unknown date without a valid inspection for a client job', () => {
    const verdict = judge(input({ lot: undated }));
    expect([verdict.word, codes(verdict)]).toEqual(['stop', ['date-unknown']]);
    expect(verdict.governing).toBeUndefined();
    expect(verdict.daysLeft).toBeUndefined();
  });

  it('Stop: a made-on date without a stated life is still unknown', () => {
    expect(codes(judge(input({ lot: { ...undated, madeOn: printed('2026-06-01') } })))).toEqual(['date-unknown']);
  });

  it('Stop: an opened life alone leaves the age of the container unknown', () => {
    const verdict = judge(
      input({
        policy: { openedLife: { count: 6, unit: 'month' } },
        lot: undated,
        container: { opened: { on: day('2026-11-20'), sureness: 'known' } },
      }),
    );
    expect(verdict.word).toBe('stop');
    expect(codes(verdict)).toContain('date-unknown');
    expect(verdict.governing?.basis).toBe('opened-life');
  });

  it('Stop: an unknown date whose inspection has run out', () => {
    const verdict = judge(input({ lot: undated, inspections: [inspection({ validUntil: day('2026-12-18') })] }));
    expect(verdict.word).toBe('stop');
    expect(verdict.reasons).toMatchObject([{ code: 'past-limit', limit: { basis: 'inspection' }, daysPast: 1 }]);
  });

  it('Stop: a failed inspection stands for a client job even within its date', () => {
    const verdict = judge(input({ inspections: [inspection({ passed: false, kind: 'test-pour' })] }));
    expect(verdict.reasons).toEqual([
      { code: 'inspection-failed', weight: 'stop', on: '2026-11-01', kind: 'test-pour' },
    ]);
  });

  it('Stop: part B does not belong to part A’s system, either way round', () => {
    for (const [own, other] of [
      ['A', 'B'],
      ['B', 'A'],
    ] as const) {
      const system = { ...A, part: own };
      const verdict = judge(input({ policy: { system } }, { pairedWith: pair(other, 'sys-2'), purpose: 'test' }));
      expect(verdict.word).toBe('stop');
      expect(verdict.reasons).toMatchObject([{ code: 'wrong-system', because: 'other-system' }]);
      expect(judge(input({ policy: { system } }, { pairedWith: pair(other) })).word).toBe('use');
    }
  });

  it('Stop: the same part twice, and a part of no system', () => {
    expect(judge(input({ policy: { system: A } }, { pairedWith: pair('A') })).reasons).toMatchObject([
      { code: 'wrong-system', because: 'same-part' },
    ]);
    expect(judge(input({}, { pairedWith: pair('A') })).reasons).toMatchObject([
      { code: 'wrong-system', because: 'no-system' },
    ]);
  });

  it('Stop: an empty container', () => {
    const verdict = judge(input({ container: { left: 0 } }, { asked: 10 }));
    expect([verdict.word, codes(verdict), verdict.override]).toEqual([
      'stop',
      ['empty'],
      { allowed: false, because: ['empty'] },
    ]);
  });
});

describe('Care', () => {
  it('Care: the limit falls within the care window after the day of use, both ends included', () => {
    const at = (text: string) => judge(input({ lot: { bestBefore: printed(text) } }));
    expect(at('2026-12-18').word).toBe('stop');
    expect(at('2026-12-19')).toMatchObject({
      word: 'care',
      daysLeft: 0,
      reasons: [{ code: 'limit-near', daysLeft: 0 }],
    });
    expect(at('2027-01-18')).toMatchObject({ word: 'care', daysLeft: 30 });
    expect(at('2027-01-19')).toMatchObject({ word: 'use', daysLeft: 31 });
  });

  it('Care: a window of 0 asks only on the last good day itself', () => {
    const at = (text: string) =>
      judge(input({ policy: { careWindowDays: 0 }, lot: { bestBefore: printed(text) } })).word;
    expect([at('2026-12-19'), at('2026-12-20')]).toEqual(['care', 'use']);
  });

  it('Care: extended by inspection, when the day relies on it', () => {
    const verdict = judge(input({ lot: past, inspections: [inspection()] }));
    expect(verdict.word).toBe('care');
    expect(verdict.reasons).toMatchObject([
      { code: 'extended-by-inspection', limit: { basis: 'inspection' }, instead: { basis: 'best-before' } },
    ]);
    expect(verdict.governing).toMatchObject({ basis: 'inspection', lastGoodDay: '2027-05-01' });
  });

  it('Care: an unknown date with a valid inspection', () => {
    const verdict = judge(input({ lot: undated, inspections: [inspection()] }));
    expect([verdict.word, codes(verdict)]).toEqual(['care', ['extended-by-inspection']]);
  });

  it('Care: an unknown date with an inspection that also outlasts an opened life still running', () => {
    const verdict = judge(
      input({
        policy: { openedLife: { count: 4, unit: 'month' }, openedLifeBasis: 'label' },
        lot: undated,
        container: { opened: { on: day('2026-10-10'), sureness: 'known' } },
        inspections: [inspection({ scope: 'container', containerId: 'tin-1' })],
      }),
    );
    expect([verdict.word, codes(verdict)]).toEqual(['care', ['extended-by-inspection']]);
    expect(verdict.reasons[0]).toHaveProperty('instead', undefined);
  });

  it('Use: an inspection the day does not rely on asks for nothing', () => {
    const early = judge(input({ lot: past, inspections: [inspection()] }, { dayOfUse: day('2026-12-12') }));
    expect([early.word, codes(early)]).toEqual(['use', []]);
  });

  it('Care: the opened day was guessed', () => {
    const verdict = judge(
      input({
        policy: { openedLife: { count: 12, unit: 'month' }, openedLifeBasis: 'label' },
        container: { opened: { on: day('2026-11-01'), sureness: 'guessed' } },
      }),
    );
    expect([verdict.word, codes(verdict)]).toEqual(['care', ['opened-day-guessed']]);
  });

  it('Care: a date read but not confirmed by a person', () => {
    const unconfirmed = printed('2027-12-01', 'month', false);
    expect(judge(input({ lot: { bestBefore: unconfirmed } })).reasons).toMatchObject([
      { code: 'date-unconfirmed', which: 'best-before' },
    ]);
    expect(judge(input({ lot: { useBy: unconfirmed } })).reasons).toMatchObject([
      { code: 'date-unconfirmed', which: 'use-by' },
    ]);
    const made = judge(
      input({
        policy: { statedLife: { count: 5, unit: 'year' }, statedLifeBasis: 'label' },
        lot: { madeOn: printed('2026-01-01', 'day', false) },
      }),
    );
    expect(made.reasons).toMatchObject([{ code: 'date-unconfirmed', which: 'made-on' }]);
  });

  it('Use: an unconfirmed date that no limit rests on asks for nothing', () => {
    expect(judge(input({ lot: { madeOn: printed('2026-01-01', 'day', false) } })).word).toBe('use');
  });

  it.each(['crystals', 'haze', 'settled', 'darkened'] as const)('Care: %s noted', (condition) => {
    const verdict = judge(input({ container: { conditions: [condition, condition] } }));
    expect([verdict.word, codes(verdict)]).toEqual(['care', [condition]]);
  });

  it('Care: frozen where freezing does not ruin', () => {
    const verdict = judge(input({ container: { conditions: ['frozen'] } }));
    expect([verdict.word, codes(verdict)]).toEqual(['care', ['frozen-thaw']]);
  });

  it.each(['own', 'test'] as const)('Care: expired, unknown or failed for %s', (purpose) => {
    const expired = judge(input({ lot: past }, { purpose }));
    expect([expired.word, codes(expired), expired.override]).toEqual(['care', ['past-limit'], 'not-needed']);
    const unknown = judge(input({ lot: undated }, { purpose }));
    expect([unknown.word, codes(unknown)]).toEqual(['care', ['date-unknown']]);
    const failed = judge(input({ inspections: [inspection({ passed: false })] }, { purpose }));
    expect([failed.word, codes(failed)]).toEqual(['care', ['inspection-failed']]);
  });

  it('Care: stored out of its stated temperature', () => {
    const storage = { leastC: 15, mostC: 27 };
    const verdict = judge(input({ policy: { storage }, container: { conditions: ['stored-out-of-range'] } }));
    expect(verdict.word).toBe('care');
    expect(verdict.reasons).toEqual([{ code: 'stored-out-of-range', weight: 'care', storage }]);
  });

  it('Care: opened, and nothing says how long it keeps opened', () => {
    const opened = { on: day('2026-11-01'), sureness: 'known' } as const;
    expect(codes(judge(input({ container: { opened } })))).toEqual(['opened-life-unknown']);
    const looked = inspection({ scope: 'container', containerId: 'tin-1', on: day('2026-11-10') });
    expect(judge(input({ container: { opened }, inspections: [looked] })).word).toBe('use');
    expect(judge(input({ container: { opened }, inspections: [{ ...looked, scope: 'lot' }] })).word).toBe('care');
    expect(judge(input({ policy: { kind: 'keeps' }, container: { opened } })).word).toBe('use');
  });

  it.each([
    ['opened-in-future', { container: { opened: { on: day('2026-11-26'), sureness: 'known' } } }],
    ['made-in-future', { lot: { madeOn: printed('2026-12-01', 'month') } }],
    [
      'opened-before-made',
      { lot: { madeOn: printed('2026-06-10') }, container: { opened: { on: day('2026-06-09'), sureness: 'known' } } },
    ],
    ['limit-before-made', { lot: { madeOn: printed('2026-06-10'), useBy: printed('2026-05-01', 'month') } }],
    ['inspected-in-future', { inspections: [inspection({ on: day('2026-11-26') })] }],
  ] as const)('Care at least: facts contradict, %s', (which, facts) => {
    const verdict = judge(input(facts));
    expect(verdict.word).not.toBe('use');
    expect(verdict.reasons).toContainEqual({ code: 'facts-contradict', weight: 'care', which });
  });

  it('Use: made and opened in the same month is no contradiction when only the month is known', () => {
    const verdict = judge(
      input({
        policy: { openedLife: { count: 2, unit: 'year' }, openedLifeBasis: 'label' },
        lot: { madeOn: printed('2026-06-30', 'month') },
        container: { opened: { on: day('2026-06-02'), sureness: 'known' } },
      }),
    );
    expect(verdict.word).toBe('use');
  });

  it('Care: the day of use is before today', () => {
    const verdict = judge(input({}, { dayOfUse: day('2026-11-24') }));
    expect([verdict.word, codes(verdict)]).toEqual(['care', ['day-of-use-past']]);
    expect(judge(input({}, { dayOfUse: day('2026-11-25') })).word).toBe('use');
  });

  it('Stop: a day of use that has passed makes no limit good again that ran out before today', () => {
    const given = { lot: { bestBefore: printed('2026-11-20') } };
    const verdict = judge(input(given, { dayOfUse: day('2026-11-01') }));
    expect([verdict.word, codes(verdict)]).toEqual(['stop', ['past-limit', 'day-of-use-past']]);
    expect(verdict).toMatchObject({ dayOfUse: '2026-11-01', judgedFor: TODAY, daysLeft: -5 });
    expect(judge(input(given, { dayOfUse: TODAY }))).toMatchObject({ word: 'stop', judgedFor: TODAY, daysLeft: -5 });
  });

  it('Care: near and extended are counted from today too, where the day has passed', () => {
    const longAgo = { dayOfUse: day('2026-09-01') };
    const near = judge(input({ lot: { bestBefore: printed('2026-12-05') } }, longAgo));
    expect(near.reasons).toMatchObject([{ code: 'day-of-use-past' }, { code: 'limit-near', daysLeft: 10 }]);
    const carried = judge(input({ lot: { bestBefore: printed('2026-11-12') }, inspections: [inspection()] }, longAgo));
    expect(codes(carried)).toEqual(['day-of-use-past', 'extended-by-inspection']);
  });

  it('Care: less left than asked, and exactly enough is enough', () => {
    const short = judge(input({ container: { left: 300 } }, { asked: 900 }));
    expect([short.word, short.reasons]).toEqual(['care', [{ code: 'short', weight: 'care', left: 300, asked: 900 }]]);
    expect(judge(input({ container: { left: 300 } }, { asked: 300 })).word).toBe('use');
  });
});

describe('Use', () => {
  it('Use: still names the governing limit and the days left', () => {
    const verdict = judge(input());
    expect(verdict).toMatchObject({ word: 'use', daysLeft: 377, reasons: [], override: 'not-needed' });
    expect(verdict.governing).toMatchObject({ basis: 'best-before', lastGoodDay: '2027-12-31' });
    expect(verdict.dayOfUse).toBe(USE_DAY);
  });

  it('Use: a house default that governs is told as a note and leaves the word', () => {
    const verdict = judge(
      input({ policy: { statedLife: { count: 3, unit: 'year' } }, lot: { ...undated, madeOn: printed('2026-01-05') } }),
    );
    expect([verdict.word, codes(verdict)]).toEqual(['use', ['house-default']]);
  });

  it('Use: a material that keeps needs no date', () => {
    const verdict = judge(input({ policy: { kind: 'keeps' }, lot: undated }));
    expect(verdict).toMatchObject({ word: 'use', limits: [], reasons: [] });
  });

  it('Stop: a printed use-by on the container outranks a policy that it keeps', () => {
    const verdict = judge(input({ policy: { kind: 'keeps' }, lot: { ...undated, useBy: printed('2026-12-01') } }));
    expect([verdict.word, codes(verdict)]).toEqual(['stop', ['past-limit']]);
  });

  it('Use: opening one jug does not age its sister', () => {
    const kept = { openedLife: { count: 1, unit: 'month' } } as const;
    const opened = { id: 'tin-2', opened: { on: day('2026-06-01'), sureness: 'known' } } as const;
    expect(judge(input({ policy: kept, container: opened })).word).toBe('stop');
    expect(judge(input({ policy: kept })).word).toBe('use');
  });
});

describe('every verdict', () => {
  it('gives every reason at once, worst first', () => {
    const verdict = judge(
      input(
        {
          lot: { ...past, hold: 'recalled' },
          container: {
            left: 5,
            conditions: ['settled', 'gelled'],
            hold: 'quarantine',
            opened: { on: day('2026-10-01'), sureness: 'guessed' },
          },
        },
        { asked: 10 },
      ),
    );
    expect(codes(verdict)).toEqual([
      'recalled',
      'quarantine',
      'gelled',
      'past-limit',
      'short',
      'opened-life-unknown',
      'opened-day-guessed',
      'settled',
    ]);
    expect(verdict.override).toEqual({ allowed: false, because: ['recalled', 'quarantine', 'gelled'] });
  });

  it('throws on an amount that is not a whole count', () => {
    expect(() => judge(input({ container: { left: 0.5 } }))).toThrow(RangeError);
    expect(() => judge(input({}, { asked: -1 }))).toThrow(RangeError);
  });

  it('does not change what it was given', () => {
    const given = input({ lot: past, inspections: [inspection()] }, { asked: 2000, others: [] });
    const before = structuredClone(given);
    judge(given);
    expect(given).toEqual(before);
  });
});
