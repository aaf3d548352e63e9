import { describe, expect, it } from 'vitest';
import { acceptOverride } from '@/shared/shelf-life/accept-override';
import { judge } from '@/shared/shelf-life/judge';
import { sayLimit } from '@/shared/shelf-life/say-limit';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import { testPoursFor } from '@/shared/shelf-life/test-pours-for';
import { trialsOf } from '@/shared/shelf-life/trials-of';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { PairedPart } from '@/shared/shelf-life/types/reason';
import type { JudgeInput } from '@/shared/shelf-life/types/verdict';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import {
  candidate,
  codes,
  container,
  day,
  input,
  inspection,
  lot,
  policy,
  printed,
  TODAY,
} from '@/tests/shared/shelf-life/fixtures';

// How two parts that were tried together are held is common practice: what did not cure in the cup does not cure in the
// piece, and a cup of two lots says nothing of either with a third. Sources are named where there are any.

type Made = Partial<Inspection> & { of: string; with: string };

/** One test pour of two lots, as it stands with each of them. */
const trial = (id: string, { of, with: other, ...made }: Made): Record<string, Inspection> => {
  const each = (lotId: string, change: Partial<Inspection> = {}) =>
    inspection({
      id: `${id} ${lotId}`,
      kind: 'test-pour',
      ...change,
      together: { trial: id, lotId: lotId === of ? other : of },
    });
  const { scope: _, containerId: __, ...common } = made;
  return { [of]: each(of, made), [other]: each(other, common) };
};

const PAST = { bestBefore: printed('2026-10-01') };

/** Container 1 of a lot of a part, with what was found of the lot, alone or together. */
const of = (
  name: string,
  part: 'A' | 'B',
  {
    found = [],
    own = [],
    ...change
  }: Partial<Omit<Candidate, 'inspections'>> & {
    found?: readonly Record<string, Inspection>[];
    own?: Inspection[];
  } = {},
): Candidate => ({
  policy: change.policy ?? policy({ system: { id: 'deep', name: 'Deep', part } }),
  lot: change.lot ?? lot({ id: name, ...PAST }),
  container: change.container ?? container({ id: `${name}1`, label: `T-${name}` }),
  inspections: [...found.flatMap((each) => each[name] ?? []), ...own],
});

const half = (one: Candidate): PairedPart => ({
  systemId: 'deep',
  systemName: 'Deep',
  part: one.policy.system?.part ?? 'A',
  label: one.container.label,
  trials: trialsOf(one),
});

const verdict = (one: Candidate, other?: Candidate, job: Partial<JudgeInput> = {}) =>
  judge({ ...one, purpose: 'client', dayOfUse: TODAY, today: TODAY, pairedWith: other && half(other), ...job });

const said = (one: Candidate, other?: Candidate, job: Partial<JudgeInput> = {}) => {
  const { word, reasons } = verdict(one, other, job);
  return [word, ...reasons.map(({ code }) => code)];
};

const passed = (change: Partial<Made> = {}, id = 'p') =>
  trial(id, { of: 'A', with: 'B', on: day('2026-11-20'), validUntil: day('2026-12-05'), ...change });
const failed = (change: Partial<Made> = {}, id = 'f') =>
  trial(id, { of: 'A', with: 'B', on: day('2026-11-10'), passed: false, validUntil: undefined, ...change });

const fresh = (name: string) => lot({ id: name, bestBefore: printed('2027-12-31') });

describe('two lots that passed together', () => {
  const found = [passed()];
  const [a, b] = [of('A', 'A', { found }), of('B', 'B', { found })];

  // 21 CFR 211.87 (from memory): dated material is retested and approved or rejected for use; here for the two as tested.
  it('are carried to the day it is valid, mixed with each other, and both say so', () => {
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const carried = verdict(one, other);
      expect([carried.word, ...codes(carried)]).toEqual(['care', 'extended-by-inspection', 'limit-near']);
      expect(carried.governing).toMatchObject({ basis: 'inspection', lastGoodDay: '2026-12-05' });
      const [reason] = carried.reasons;
      expect(reason && sayReason(reason, { today: TODAY })).toBe(
        `Printed best before ended 1 Oct; a test pour with the lot of ${other.container.label} that passed carries it to 5 Dec, for these two together.`,
      );
      expect(carried.governing && sayLimit(carried.governing, { today: TODAY })).toBe(
        'Passed test pour of this pair on 20 Nov, valid until 5 Dec.',
      );
    }
  });

  it('are past again the day after', () => {
    const late = verdict(a, b, { dayOfUse: day('2026-12-06') });
    expect([late.word, ...codes(late)]).toEqual(['stop', 'past-limit']);
    const [reason] = late.reasons;
    expect(reason && sayReason(reason, { today: TODAY })).toBe(
      'Test pour of this pair ends 1 day before the day of use.',
    );
  });

  it('say nothing of either alone or with a third', () => {
    const third = of('C', 'B', { lot: fresh('C') });
    expect(said(a)).toEqual(['stop', 'past-limit']);
    expect(said(a, third)).toEqual(['stop', 'past-limit']);
    expect(said(third, a)).toEqual(['use']);
    const withThird = [passed(), passed({ with: 'C', validUntil: day('2027-06-01') }, 'q')];
    expect(verdict(of('A', 'A', { found: withThird }), of('B', 'B', { found: withThird })).governing?.lastGoodDay).toBe(
      '2026-12-05',
    );
  });

  // DoD 4140.27-M: type I has a definite life that no inspection extends, type II may be extended; and 21 CFR 211.137 (from
  // memory): the expiry on the label stands.
  it('are not carried past what no test extends', () => {
    const fixed = of('A', 'A', {
      found,
      policy: policy({ kind: 'fixed', system: { id: 'deep', name: 'Deep', part: 'A' } }),
    });
    expect(said(fixed, b)).toEqual(['stop', 'past-limit', 'inspection-does-not-extend']);
    const [, note] = verdict(fixed, b).reasons;
    expect(note && sayReason(note, { today: TODAY })).toBe(
      'A test pour with the lot of T-B that passed does not extend this: printed best before stands.',
    );
    const useBy = of('A', 'A', { found, lot: lot({ id: 'A', useBy: printed('2026-11-24') }) });
    expect(said(useBy, b)[0]).toBe('stop');
    const opened = container({ id: 'A1', opened: { on: day('2026-06-01'), sureness: 'known' } });
    const lived = policy({ openedLife: { count: 3, unit: 'month' }, system: { id: 'deep', name: 'Deep', part: 'A' } });
    expect(said(of('A', 'A', { found, policy: lived, container: opened }), b)).toContain('past-limit');
    const own = [passed({ scope: 'container', containerId: 'A1' })];
    expect(
      said(
        of('A', 'A', { found: own, policy: lived, container: opened }),
        of('B', 'B', { found: own, lot: fresh('B') }),
      ),
    ).toEqual(['care', 'extended-by-inspection', 'limit-near']);
  });

  it('never shorten what is good longer by itself, and cover a date that is not known', () => {
    expect(said(of('A', 'A', { found, lot: fresh('A') }), b)).toEqual(['use']);
    const undated = of('A', 'A', { found, lot: lot({ id: 'A' }) });
    expect(said(undated)).toEqual(['stop', 'date-unknown']);
    expect(said(undated, b)).toEqual(['care', 'extended-by-inspection', 'limit-near']);
  });

  it('are no longer carried once they failed together, or either was found bad', () => {
    const again = [passed(), failed({ on: day('2026-11-22') })];
    expect(said(of('A', 'A', { found: again }), of('B', 'B', { found: again }))).toEqual([
      'stop',
      'pair-failed',
      'past-limit',
    ]);
    const bad = inspection({ id: 'look', on: day('2026-11-22'), passed: false });
    expect(said(of('A', 'A', { found, own: [bad] }), b)).toEqual(['stop', 'past-limit', 'inspection-failed']);
    // Said of A too, though it was B that was found bad.
    expect(said(a, of('B', 'B', { found, own: [bad] }))).toEqual(['stop', 'past-limit']);
    // An inspection that passed since makes B good again, not the test pour before it.
    const since = inspection({ id: 'again', on: day('2026-11-23'), validUntil: day('2027-01-01') });
    expect(said(a, of('B', 'B', { found, own: [bad, since] }))).toEqual(['stop', 'past-limit']);
  });

  it('of one container speaks for that container, from both sides', () => {
    const one = [passed({ scope: 'container', containerId: 'A1' })];
    const sister = of('A', 'A', { found: one, container: container({ id: 'A2' }) });
    const [tin, other] = [of('A', 'A', { found: one }), of('B', 'B', { found: one })];
    expect([said(tin, other)[0], said(other, tin)[0]]).toEqual(['care', 'care']);
    expect([said(sister, other)[0], said(other, sister)[0]]).toEqual(['stop', 'stop']);
  });

  it('let an override of a Stop for a date rest on it, for the pair alone', () => {
    const late = { dayOfUse: day('2026-12-20') };
    const asked = { today: TODAY, pairedWith: half(b) };
    const offered = testPoursFor(a, asked).at(-1);
    expect(offered).toMatchObject({ pour: { id: 'p A', passed: true }, takenBack: false });
    const testPour = offered && { madeOn: offered.pour.on, passed: offered.pour.passed, note: 'Hard' };
    expect(acceptOverride(verdict(a, b, late), { reason: 'Agreed', testPour }, { today: TODAY }).ok).toBe(true);
    expect(testPoursFor(a, { today: TODAY })).toEqual([]);
    const third = half(of('C', 'B'));
    expect(testPoursFor(a, { today: TODAY, pairedWith: third })).toEqual([]);
  });

  it('are offered as the ones to take, where the other is in hand', () => {
    const common = { asked: 10, dayOfUse: TODAY, today: TODAY, purpose: 'client', colourShows: false } as const;
    const labels = (pairedWith: PairedPart) =>
      suggestContainers({ ...common, candidates: [a], pairedWith }).containers.map(({ label }) => label);
    expect(labels(half(b))).toEqual(['T-A']);
    expect(labels(half(of('C', 'B')))).toEqual([]);
  });
});

describe('two lots that failed together', () => {
  const fine = (name: string, part: 'A' | 'B', found: Record<string, Inspection>[], own: Inspection[] = []) =>
    of(name, part, { found, own, lot: fresh(name) });

  // 21 CFR 211.165(f) (from memory): what fails is rejected; until it is tested again and meets what is asked.
  it('stop, whatever either passed with a third, until the two pass together', () => {
    const thirds = [
      failed(),
      passed({ with: 'D', on: day('2026-11-12') }, 'q'),
      passed({ of: 'C', with: 'B', on: day('2026-11-12') }, 'r'),
    ];
    const [a, b] = [fine('A', 'A', thirds), fine('B', 'B', thirds)];
    expect([said(a), said(b)]).toEqual([['use'], ['use']]);
    expect([said(a, b), said(b, a)]).toEqual([
      ['stop', 'pair-failed'],
      ['stop', 'pair-failed'],
    ]);
    expect(said(a, fine('D', 'B', thirds))).toEqual(['use']);
    const later = [...thirds, passed()];
    expect([
      said(fine('A', 'A', later), fine('B', 'B', later)),
      said(fine('B', 'B', later), fine('A', 'A', later)),
    ]).toEqual([['use'], ['use']]);
  });

  it('stop an own piece too, ask a test for care, and are overridden by nothing', () => {
    const [a, b] = [fine('A', 'A', [failed()]), fine('B', 'B', [failed()])];
    expect(said(a, b, { purpose: 'own' })).toEqual(['stop', 'pair-failed']);
    expect(said(a, b, { purpose: 'test' })).toEqual(['care', 'pair-failed']);
    expect(verdict(a, b).override).toEqual({ allowed: false, because: ['pair-failed'] });
    const [reason] = verdict(a, b).reasons;
    expect(reason && sayReason(reason, { today: TODAY })).toBe(
      'Its lot and that of T-B failed their test pour together on 10 Nov.',
    );
    expect(reason && whatToDo(reason, { materialKind: 'resin-a', prefer: 'metric' })).toMatch(/^Do not mix these two/);
  });

  it('put each in doubt by itself, until that one passed with anything', () => {
    const doubt = (...own: Inspection[]) => said(fine('A', 'A', [failed()], own));
    expect(doubt()).toEqual(['stop', 'inspection-failed']);
    const [reason] = verdict(fine('A', 'A', [failed()])).reasons;
    expect(reason && sayReason(reason, { today: TODAY })).toBe(
      'A test pour of its lot together with another failed on 10 Nov.',
    );
    expect(doubt(inspection({ on: day('2026-11-12') }))).toEqual(['use']);
    const withD = [failed(), passed({ with: 'D' }, 'q')];
    expect(said(fine('A', 'A', withD))).toEqual(['use']);
    expect(said(fine('B', 'B', withD))).toEqual(['stop', 'inspection-failed']);
  });

  it('are cleared for one container by a pass of that one, not for its sister', () => {
    const own = inspection({ on: day('2026-11-12'), scope: 'container', containerId: 'A1' });
    const tin = fine('A', 'A', [failed()], [own]);
    expect(said(tin)).toEqual(['use']);
    expect(said({ ...tin, container: container({ id: 'A2' }) })).toEqual(['stop', 'inspection-failed']);
    // Nor does it clear the pair.
    expect(said(tin, fine('B', 'B', [failed()]))).toEqual(['stop', 'pair-failed']);
  });

  it('are not cleared by a pass of an earlier day that is written later', () => {
    const early = inspection({ on: day('2026-11-09') });
    expect(said(fine('A', 'A', [failed()], [early]))).toEqual(['stop', 'inspection-failed']);
    const pair = [failed(), passed({ on: day('2026-11-09') })];
    expect(said(fine('A', 'A', pair), fine('B', 'B', pair))).toEqual(['stop', 'pair-failed']);
    const sameDay = (...found: Record<string, Inspection>[]) => said(fine('A', 'A', found), fine('B', 'B', found));
    expect(sameDay(failed(), passed({ on: day('2026-11-10') }))).toEqual(['use']);
    expect(sameDay(passed({ on: day('2026-11-10') }), failed())).toEqual(['stop', 'pair-failed']);
  });

  it('of one container are cleared by that container and the other lot only, seen from either side', () => {
    const one = { scope: 'container', containerId: 'A1' } as const;
    const whole = [failed(one), passed()];
    expect([
      said(fine('A', 'A', whole), fine('B', 'B', whole)),
      said(fine('B', 'B', whole), fine('A', 'A', whole)),
    ]).toEqual([
      ['stop', 'pair-failed'],
      ['stop', 'pair-failed'],
    ]);
    const same = [failed(one), passed(one)];
    expect([
      said(fine('A', 'A', same), fine('B', 'B', same)),
      said(fine('B', 'B', same), fine('A', 'A', same)),
    ]).toEqual([['use'], ['use']]);
  });

  it('are offered to nobody for each other', () => {
    const [a, b] = [fine('A', 'A', [failed()], [inspection({ on: day('2026-11-12') })]), fine('B', 'B', [failed()])];
    const common = { asked: 10, dayOfUse: TODAY, today: TODAY, purpose: 'test', colourShows: false } as const;
    expect(suggestContainers({ ...common, candidates: [a], pairedWith: half(b) }).why).toBe('none-good');
    expect(suggestContainers({ ...common, candidates: [a] }).containers).toHaveLength(1);
  });
});

describe('a finding of one day', () => {
  it('is cleared by what passed after it on that day, and not by what was written before it', () => {
    const fail = inspection({ id: 'x', passed: false });
    const pass = inspection({ id: 'y' });
    expect(judge(input({ inspections: [fail, pass] })).word).toBe('use');
    expect(judge(input({ inspections: [pass, fail] })).word).toBe('stop');
  });

  it('takes back a test pour before it, for an override', () => {
    const pour = inspection({ id: 'x', kind: 'test-pour' });
    const fail = inspection({ id: 'y', kind: 'test-pour', passed: false });
    const pours = (inspections: Inspection[]) =>
      testPoursFor(candidate({ inspections }), { today: TODAY }).map(({ pour: { id }, takenBack }) => [id, takenBack]);
    expect(pours([pour, fail])).toEqual([
      ['x', true],
      ['y', false],
    ]);
    expect(pours([fail, pour])).toEqual([
      ['y', false],
      ['x', false],
    ]);
    // A failure of an earlier day that is written later takes nothing back.
    expect(pours([pour, { ...fail, on: day('2026-10-20') }])).toEqual([
      ['y', false],
      ['x', false],
    ]);
  });
});
