import { describe, expect, it } from 'vitest';
import { judgeTimeline } from '@/shared/timeline/judge-timeline';
import { sayStepCaution } from '@/shared/timeline/say-step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const POUR = { 7: { againFromHours: 12, againToHours: 24, demouldHours: 72, fullCureDays: 7 } };
const OIL = { 3: { recoatFromHours: 12, recoatToHours: 48, cureDays: 7 } };
const verdictsOf = (some: ReturnType<typeof steps>, more: Partial<typeof FACTS> = {}) =>
  Object.fromEntries(judgeTimeline(some, { ...FACTS, ...more }).map((each) => [each.stepId, each]));

describe('a verdict for each step', () => {
  it('is Use where every rule is kept, the first allowed day itself included', () => {
    const some = steps(
      { kind: 'wood-dry', day: '2026-11-30' },
      { kind: 'lift', day: '2026-11-30', pourId: 7 },
      { kind: 'lift', day: '2026-12-01', pourId: 7 },
      { kind: 'demould', day: '2026-12-04', pourId: 7 },
      { kind: 'flatten', day: '2026-12-08', pourId: 7 },
      { kind: 'coat', day: '2026-12-08', productId: 3, coatNr: 1 },
      { kind: 'coat', day: '2026-12-10', productId: 3, coatNr: 2 },
      { kind: 'delivery', day: '2026-12-17' },
    );
    const all = judgeTimeline(some, { ...FACTS, pours: POUR, finishes: OIL, dueOn: day('2026-12-17') });
    expect(all.map(({ word, cautions }) => [word, ...cautions])).toEqual(some.map(() => ['use']));
  });

  it('is Stop a day before the sheet lets the form come off', () => {
    const some = steps(
      { kind: 'lift', name: 'Lift 2', day: '2026-12-01', pourId: 7 },
      { kind: 'demould', day: '2026-12-03', pourId: 7 },
    );
    expect(verdictsOf(some, { pours: POUR })[2]).toEqual({
      stepId: 2,
      word: 'stop',
      cautions: [{ code: 'before-ready', because: 'demould', earliest: '2026-12-04', after: 'Lift 2' }],
    });
  });

  it('is Care between demould and full cure, and Stop before demould, for whatever is done to the casting', () => {
    const at = (kind: 'flatten' | 'coat', on: string) =>
      verdictsOf(steps({ kind: 'lift', day: '2026-12-01', pourId: 7 }, { kind, day: on }), { pours: POUR })[2];
    expect(at('flatten', '2026-12-03')?.word).toBe('stop');
    expect(at('flatten', '2026-12-04')).toMatchObject({ word: 'care', cautions: [{ because: 'full-cure' }] });
    expect(at('flatten', '2026-12-08')?.word).toBe('use');
    expect(at('coat', '2026-12-07')?.word).toBe('care');
  });

  it('says both what the sheet forbids and what the cure asks, the weightier first', () => {
    const some = steps({ kind: 'lift', day: '2026-12-01', pourId: 7 }, { kind: 'flatten', day: '2026-12-02' });
    expect(verdictsOf(some, { pours: POUR })[2]?.cautions).toMatchObject([
      { because: 'demould', earliest: '2026-12-04' },
      { because: 'full-cure', earliest: '2026-12-08' },
    ]);
  });

  it('asks to sand where the window to pour or coat again has passed', () => {
    const some = steps(
      { kind: 'coat', name: 'Coat 1', day: '2026-12-01', productId: 3, coatNr: 1 },
      { kind: 'coat', day: '2026-12-04', productId: 3, coatNr: 2 },
    );
    expect(verdictsOf(some, { finishes: OIL })[2]).toMatchObject({
      word: 'care',
      cautions: [{ code: 'window-missed', latest: '2026-12-03', after: 'Coat 1' }],
    });
    expect(verdictsOf(some.slice(0, 1), { finishes: OIL })[1]?.word).toBe('use');
  });

  it('goes by the numbers of coats and lifts, not by their days', () => {
    const some = steps(
      { kind: 'coat', day: '2026-12-20', productId: 3, coatNr: 1 },
      { kind: 'coat', day: '2026-12-19', productId: 3, coatNr: 2 },
      { kind: 'lift', day: '2026-12-05', pourId: 7 },
      { kind: 'lift', day: '2026-12-04', pourId: 7 },
    );
    const all = verdictsOf(some, { finishes: OIL, pours: POUR });
    expect(all[2]).toMatchObject({ word: 'stop', cautions: [{ because: 'recoat', earliest: '2026-12-21' }] });
    expect(all[4]).toMatchObject({ word: 'stop', cautions: [{ because: 'again', earliest: '2026-12-06' }] });
  });

  it('minds a closed day only where somebody has to be there', () => {
    const closed = { weekdays: [0], ranges: [{ from: day('2026-12-24'), to: day('2026-12-26'), name: 'Holiday' }] };
    const some = steps(
      { kind: 'flatten', day: '2026-12-06' },
      { kind: 'cure', day: '2026-12-06' },
      { kind: 'wood-dry', day: '2026-12-06' },
      { kind: 'other', day: '2026-12-25' },
    );
    const all = verdictsOf(some, { closed });
    expect(all[1]?.cautions).toEqual([{ code: 'closed-day', name: '' }]);
    expect([all[2]?.word, all[3]?.word]).toEqual(['use', 'use']);
    expect(all[4]?.cautions).toEqual([{ code: 'closed-day', name: 'Holiday' }]);
  });

  it('says a day that has passed and is not done; today has not passed, and what is done is not judged', () => {
    const some = steps(
      { kind: 'flatten', day: '2026-11-24' },
      { kind: 'other', day: '2026-11-25' },
      { kind: 'assembly', day: '2026-11-20', doneOn: day('2026-11-21') },
      { kind: 'cure', day: '2026-11-20' },
    );
    const all = verdictsOf(some);
    // Nobody does the curing: it is over on its day.
    expect(all[4]?.word).toBe('use');
    expect(all[1]?.cautions).toEqual([{ code: 'past-not-done', days: 1 }]);
    expect([all[2]?.word, all[3]?.word]).toEqual(['use', 'use']);
  });

  it('counts from the day a step was really done', () => {
    const some = steps(
      { kind: 'lift', day: '2026-12-01', pourId: 7, doneOn: day('2026-12-03') },
      { kind: 'demould', day: '2026-12-04', pourId: 7 },
    );
    expect(verdictsOf(some, { pours: POUR })[2]?.cautions).toMatchObject([{ earliest: '2026-12-06' }]);
  });

  it('says plainly that the due day is before the cure ends, beside the delivery', () => {
    const some = steps(
      { kind: 'coat', day: '2026-12-10', productId: 3, coatNr: 1 },
      { kind: 'delivery', day: '2026-12-17' },
    );
    const due = (on: string) => verdictsOf(some, { finishes: OIL, dueOn: day(on) })[2]?.cautions;
    expect(due('2026-12-17')).toEqual([]);
    expect(due('2026-12-16')).toEqual([
      { code: 'due-before-cured', dueOn: '2026-12-16', curedOn: '2026-12-17' },
      { code: 'after-due', dueOn: '2026-12-16' },
    ]);
  });

  it('says it beside the last step where no delivery is planned', () => {
    const some = steps({ kind: 'coat', day: '2026-12-10', productId: 3, coatNr: 1 });
    expect(verdictsOf(some, { finishes: OIL, dueOn: day('2026-12-12') })[1]).toMatchObject({
      word: 'care',
      cautions: [{ code: 'due-before-cured', curedOn: '2026-12-17' }],
    });
  });

  it('keeps the order of work: dry wood before it is poured on, delivery last', () => {
    const some = steps(
      { kind: 'wood-dry', name: 'Slab dry', day: '2026-12-05' },
      { kind: 'seal', day: '2026-12-04' },
      { kind: 'assembly', name: 'Legs on', day: '2026-12-09' },
      { kind: 'delivery', day: '2026-12-08' },
    );
    const all = verdictsOf(some);
    expect(all[2]?.cautions).toMatchObject([{ because: 'wood-dry', earliest: '2026-12-05' }]);
    expect(all[4]).toMatchObject({ word: 'care', cautions: [{ because: 'last', after: 'Legs on' }] });
  });

  it('does not count one finish against another, nor one pour against another', () => {
    const some = steps(
      { kind: 'coat', day: '2026-12-01', productId: 3, coatNr: 1 },
      { kind: 'coat', day: '2026-12-01', productId: 4, coatNr: 1 },
      { kind: 'lift', day: '2026-11-27', pourId: 7 },
      { kind: 'lift', day: '2026-11-27', pourId: 8 },
    );
    const all = verdictsOf(some, { finishes: { ...OIL, 4: OIL[3] } });
    expect([1, 2, 3, 4].map((id) => all[id]?.word)).toEqual(['use', 'use', 'use', 'use']);
  });

  it('keeps only the order where no sheet says how long', () => {
    const some = steps(
      { kind: 'lift', day: '2026-12-01', pourId: 9 },
      { kind: 'demould', day: '2026-12-01', pourId: 9 },
      { kind: 'delivery', day: '2026-12-01' },
    );
    expect(Object.values(verdictsOf(some)).map(({ word }) => word)).toEqual(['use', 'use', 'use']);
  });
});

describe('a caution in words', () => {
  const say = (caution: Parameters<typeof sayStepCaution>[0]) =>
    sayStepCaution(caution, { today: FACTS.today, order: 'day-first' });
  it('names the first day and what it waits for', () => {
    expect(say({ code: 'before-ready', because: 'demould', earliest: day('2026-12-04'), after: 'Lift 2' })).toBe(
      'Not before 4 Dec: only then Lift 2 may leave the form.',
    );
    expect(say({ code: 'before-ready', because: 'last', earliest: day('2026-12-09'), after: 'Legs on' })).toBe(
      'Legs on comes first, on 9 Dec.',
    );
    expect(say({ code: 'due-before-cured', dueOn: day('2026-12-16'), curedOn: day('2027-01-02') })).toBe(
      'The due day, 16 Dec, is before everything is cured, 2 Jan 2027.',
    );
    expect(say({ code: 'closed-day', name: 'Holiday' })).toBe('The workshop is closed: Holiday.');
    expect(say({ code: 'window-missed', because: 'recoat', latest: day('2026-12-03'), after: 'Coat 1' })).toBe(
      'The window after Coat 1 ends on 3 Dec. Sand it first.',
    );
  });
});
