import { describe, expect, it } from 'vitest';
import { judge } from '@/shared/shelf-life/judge';
import { sayLimit } from '@/shared/shelf-life/say-limit';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { saySuggestionWhy } from '@/shared/shelf-life/say-suggestion-why';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';
import type { JudgeInput } from '@/shared/shelf-life/types/verdict';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import { candidate, day, input, inspection, printed, TODAY } from '@/tests/shared/shelf-life/fixtures';

const context = { today: TODAY, sayAmount: (amount: number) => `${amount} g` };
const opened = (text: string) => ({ opened: { on: day(text), sureness: 'known' } }) as const;
const reasons = (given: JudgeInput) => judge(given).reasons.map((reason) => sayReason(reason, context));
const threeMonths = { openedLife: { count: 3, unit: 'month' } } as const;

describe('sayVerdict', () => {
  it('gives the two dates when dates decide or nothing is in the way', () => {
    const said = (date: string) => sayVerdict(judge(input({ lot: { bestBefore: printed(date) } })), context);
    expect(said('2026-12-12')).toBe('Good to 12 Dec. Needed on 19 Dec.');
    expect(said('2026-12-25')).toBe('Good to 25 Dec. Needed on 19 Dec.');
    expect(said('2027-12-31')).toBe('Good to 31 Dec 2027. Needed on 19 Dec.');
  });

  it('says that it is judged for today in place of a day that has passed', () => {
    const given = input({ lot: { bestBefore: printed('2026-11-20') } }, { dayOfUse: day('2026-11-01') });
    expect(sayVerdict(judge(given), context)).toBe('Good to 20 Nov. Judged for today, 25 Nov.');
    expect(reasons(given)).toEqual([
      'Printed best before ended 5 days ago.',
      'The day of use, 1 Nov, is already past, so it is judged for today.',
    ]);
  });

  it('gives the worst reason otherwise', () => {
    expect(sayVerdict(judge(input({ lot: { hold: 'recalled' } })), context)).toBe('Its lot is recalled.');
    expect(sayVerdict(judge(input({ lot: { bestBefore: undefined } })), context)).toBe(
      'No date is known, and no inspection covers the day of use.',
    );
  });

  it('says that a material keeps', () => {
    const keeps = judge(input({ policy: { kind: 'keeps' }, lot: { bestBefore: undefined } }));
    expect(sayVerdict(keeps, context)).toBe('Keeps. No limit is stated.');
  });
});

describe('sayReason', () => {
  it('counts the days to and from the day of use', () => {
    const past = input({ policy: threeMonths, container: opened('2026-09-12') });
    expect(reasons(past)[0]).toBe('Opened life ends 7 days before the day of use.');
    expect(reasons(input({ lot: { bestBefore: printed('2026-12-18') } }))[0]).toBe(
      'Printed best before ends 1 day before the day of use.',
    );
    expect(reasons(input({ lot: { bestBefore: printed('2026-12-20') } }))[0]).toBe(
      'Printed best before ends 1 day after the day of use.',
    );
    expect(reasons(input({ lot: { useBy: printed('2026-12-19') } }))[0]).toBe('Printed use by ends on the day of use.');
    const today = (bestBefore: string) =>
      reasons(input({ lot: { bestBefore: printed(bestBefore) } }, { dayOfUse: TODAY }))[0];
    expect(today('2026-11-25')).toBe('Printed best before ends today.');
    expect(today('2026-11-27')).toBe('Printed best before ends in 2 days.');
  });

  it('says what an inspection carries', () => {
    const extended = input({ lot: { bestBefore: printed('2026-12-12') }, inspections: [inspection()] });
    expect(reasons(extended)).toEqual([
      'Printed best before ended 12 Dec; a passed inspection carries it to 1 May 2027.',
    ]);
    expect(reasons(input({ lot: { bestBefore: undefined }, inspections: [inspection()] }))).toEqual([
      'No date is printed; a passed inspection carries it to 1 May 2027.',
    ]);
    const fixed = input({
      policy: { kind: 'fixed' },
      lot: { bestBefore: printed('2026-12-12') },
      inspections: [inspection()],
    });
    expect(reasons(fixed)[1]).toBe('A passed inspection does not extend this: printed best before stands.');
  });

  it('says amounts in the stock’s own way', () => {
    expect(reasons(input({ container: { left: 300 } }, { asked: 900 }))).toEqual(['300 g left, 900 g asked.']);
  });

  it('says which part belongs to what', () => {
    const system = { id: 's1', name: 'Deep', part: 'B' } as const;
    const pairedWith = { systemId: 's2', systemName: 'Coat', part: 'A', label: 'T-02' } as const;
    expect(reasons(input({ policy: { system } }, { pairedWith }))).toEqual([
      'T-02 is part A of Coat; this is part B of Deep.',
    ]);
    expect(
      reasons(
        input({ policy: { system: { ...system, part: 'A' } } }, { pairedWith: { ...pairedWith, systemId: 's1' } }),
      ),
    ).toEqual(['Both are part A of Deep.']);
    expect(reasons(input({}, { pairedWith }))).toEqual(['T-02 is part A of Coat; this belongs to no system.']);
  });

  it('says a month as a month', () => {
    expect(reasons(input({ lot: { bestBefore: printed('2027-12-31', 'month', false) } }))).toEqual([
      'The printed best before, Dec 2027, was read but not confirmed.',
    ]);
  });

  it('says degrees below zero with a minus sign', () => {
    const storage = { leastC: -18, mostC: 27 };
    expect(reasons(input({ policy: { storage }, container: { conditions: ['stored-out-of-range'] } }))).toEqual([
      'It stood outside its stated −18 to 27 °C.',
    ]);
    const [stood] = judge(input({ policy: { storage }, container: { conditions: ['stored-out-of-range'] } })).reasons;
    expect(stood && sayReason(stood, { ...context, prefer: 'imperial' })).toBe(
      'It stood outside its stated 0 to 81 °F.',
    );
  });

  const everything: JudgeInput[] = [
    input({ lot: { hold: 'recalled' }, container: { hold: 'quarantine' } }),
    input({ lot: { hold: 'on-hold' }, container: { left: 0 } }),
    input({ policy: { freezingRuins: true }, container: { conditions: ['gelled', 'skinned-through', 'frozen'] } }),
    input({ container: { conditions: ['frozen', 'crystals', 'haze', 'settled', 'darkened', 'stored-out-of-range'] } }),
    input({}, { pairedWith: { systemId: 's', systemName: 'Deep', part: 'A', label: 'T-02' }, asked: 5000 }),
    input({ lot: { bestBefore: undefined }, inspections: [inspection({ passed: false })] }),
    input({
      lot: { bestBefore: printed('2026-12-12', 'day', false) },
      container: { opened: { on: day('2026-11-01'), sureness: 'guessed' } },
    }),
    input({
      policy: { kind: 'fixed', statedLife: { count: 1, unit: 'month' } },
      lot: { bestBefore: undefined, madeOn: printed('2026-01-01') },
      inspections: [inspection()],
    }),
    input({ lot: { bestBefore: printed('2026-12-01') }, inspections: [inspection({ kind: 'test-pour' })] }),
    input(
      { lot: { bestBefore: printed('2026-12-20'), madeOn: printed('2027-01-01') }, container: opened('2026-11-26') },
      { dayOfUse: day('2026-11-24') },
    ),
    input(
      { lot: { bestBefore: printed('2026-05-20'), madeOn: printed('2026-06-01') }, container: opened('2026-05-01') },
      { purpose: 'own' },
    ),
    input({ inspections: [inspection({ on: day('2026-12-01') })] }),
    input({ lot: { bestBefore: printed('2026-12-20') } }),
  ];

  it('has a short sentence for every reason, and what to do for every one but a plain note', () => {
    const seen = new Set<string>();
    for (const reason of everything.flatMap((given) => judge(given).reasons)) {
      seen.add(reason.code);
      const said = sayReason(reason, context);
      expect(said).toMatch(/^[A-Z0-9].*\.$/);
      expect(said.length).toBeLessThanOrEqual(100);
      expect(said).not.toMatch(/undefined|NaN|\[object/);
      const todo = whatToDo(reason, { materialKind: 'resin-a', prefer: 'metric' });
      if (reason.code === 'inspection-does-not-extend') expect(todo).toBeUndefined();
      else expect(todo).toMatch(/^[A-Z].*\.$/);
    }
    expect([...seen].sort()).toEqual([
      'crystals',
      'darkened',
      'date-unconfirmed',
      'date-unknown',
      'day-of-use-past',
      'empty',
      'extended-by-inspection',
      'facts-contradict',
      'frozen-ruined',
      'frozen-thaw',
      'gelled',
      'haze',
      'house-default',
      'inspection-does-not-extend',
      'inspection-failed',
      'limit-near',
      'on-hold',
      'opened-day-guessed',
      'opened-life-unknown',
      'past-limit',
      'quarantine',
      'recalled',
      'settled',
      'short',
      'skinned-through',
      'stored-out-of-range',
      'wrong-system',
    ]);
  });
});

describe('sayLimit', () => {
  it('says each basis with what it was computed from', () => {
    const { limits } = judge(
      input({
        policy: { ...threeMonths, statedLife: { count: 12, unit: 'month' } },
        lot: {
          useBy: printed('2027-03-15', 'month'),
          bestBefore: printed('2026-12-12'),
          madeOn: printed('2026-05-01', 'month'),
        },
        container: opened('2026-09-01'),
        inspections: [inspection()],
      }),
    );
    expect(limits.map((limit) => sayLimit(limit, { today: TODAY }))).toEqual([
      'Printed use by Mar 2027, so good to 31 Mar 2027.',
      'Printed best before 12 Dec. A passed inspection reaches further.',
      'Stated life ends 1 May 2027: made May 2026, keeps 12 months by the house default. Not counted, because the label has its own date.',
      'Opened life ends 1 Dec: opened 1 Sep, keeps 3 months by the house default.',
      'Passed inspection on 1 Nov, valid until 1 May 2027.',
    ]);
    const [, unneeded] = judge(input({ inspections: [inspection()] })).limits;
    expect(unneeded && sayLimit(unneeded, { today: TODAY })).toMatch(/Not counted, because it extends nothing\.$/);
  });
});

describe('why containers are suggested', () => {
  const others = [
    candidate({ container: { id: 't2', label: 'T-14', left: 500 } }),
    candidate({ container: { id: 't3', label: 'T-09', left: 400 } }),
  ];
  const said = (asked: number) => {
    const { instead } = judge(input({ container: { conditions: ['gelled'] } }, { asked, others }));
    return instead && saySuggestionWhy(instead.why);
  };

  it('is said for what the judge suggests', () => {
    expect(said(900)).toBe('First to expire first.');
    expect(said(950)).toMatch(/it is not enough\.$/);
    expect(saySuggestionWhy('none-good')).toBe('Nothing else on hand is good for that day.');
  });
});
