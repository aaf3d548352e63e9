import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { unwrap } from '@/shared/result/result';
import { cureHold } from '@/shared/timeline/cure-hold';
import { judgeTimeline } from '@/shared/timeline/judge-timeline';
import { dayThatCounts } from '@/shared/timeline/last-use';
import { lineOfEachPart } from '@/shared/timeline/line-of-each-part';
import { linksOf } from '@/shared/timeline/links-of';
import { shiftSteps } from '@/shared/timeline/shift-steps';
import { STEP_KINDS, type Step } from '@/shared/timeline/step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const [TOP, BASE] = [1, 2];
const KNOWN = {
  ...FACTS,
  pours: { 7: { againFromHours: 12, againToHours: 24, demouldHours: 72, fullCureDays: 7 }, 8: { demouldHours: 24 } },
  finishes: { 3: { recoatFromHours: 12, recoatToHours: 48, cureDays: 7 }, 4: { cureDays: 2 } },
};

// A river top of one lift on 1 Dec, and a wooden base that is oiled meanwhile.
const TABLE = steps(
  { kind: 'lift', name: 'River', day: '2026-12-01', pourId: 7, partId: TOP },
  { kind: 'demould', day: '2026-12-04', pourId: 7, partId: TOP },
  { kind: 'coat', name: 'Base 1', day: '2026-12-01', productId: 3, coatNr: 1, partId: BASE },
  { kind: 'coat', name: 'Base 2', day: '2026-12-02', productId: 3, coatNr: 2, partId: BASE },
  { kind: 'flatten', name: 'Flatten', day: '2026-12-08', partId: TOP },
  { kind: 'coat', name: 'Top 1', day: '2026-12-09', productId: 3, coatNr: 1, partId: TOP },
  { kind: 'assembly', name: 'Top on base', day: '2026-12-10' },
  { kind: 'delivery', day: '2026-12-16' },
);
const ofWhole = (some: readonly Step[]) => some.map((step) => ({ ...step, partId: null }));
const words = (some: readonly Step[]) => judgeTimeline(some, KNOWN).map(({ stepId, word }) => [stepId, word]);
const waitsFor = (id: number, some: readonly Step[] = TABLE) =>
  [
    ...new Set(
      linksOf(some, KNOWN)
        .filter(({ after }) => after.id === id)
        .map(({ before }) => before.name),
    ),
  ].sort();

describe('the steps of a part', () => {
  it('wait for their own and the whole job’s, not for another part’s', () => {
    expect(words(TABLE).every(([, word]) => word === 'use')).toBe(true);
    // The same days, all of the whole job: the oil would go on a top that is still in its form.
    expect(words(ofWhole(TABLE)).filter(([, word]) => word === 'stop')).toEqual([
      [3, 'stop'],
      [4, 'stop'],
    ]);
    expect(waitsFor(3)).toEqual([]);
    expect(waitsFor(6)).toEqual(['Flatten', 'River', 'demould']);
  });

  it('are waited for by the whole job, whichever part they are of', () => {
    expect(waitsFor(7)).toEqual(['Flatten', 'River', 'demould']);
    expect(waitsFor(8)).toEqual(['Base 2', 'Flatten', 'River', 'Top 1', 'Top on base', 'demould']);
  });

  it('wait for what was planned for the whole job', () => {
    const [dry] = steps({ kind: 'wood-dry', name: 'Wood dry', day: '2026-12-03' });
    const some = [...TABLE, { ...dry, id: 9 } as Step];
    expect(words(some).filter(([, word]) => word === 'care')).toEqual([[1, 'care']]);
    expect(waitsFor(5, some)).toContain('Wood dry');
  });

  it('follow one another by their own numbers of coats, and those of the whole job in their row', () => {
    const coat = (coatNr: number, partId: number | null) => ({
      kind: 'coat' as const,
      name: `${partId ?? 'all'} ${coatNr}`,
      day: `2026-12-0${coatNr}`,
      productId: 3,
      coatNr,
      partId,
    });
    const some = steps(coat(1, null), coat(2, TOP), coat(2, BASE), coat(3, BASE), coat(4, null));
    expect(some.map(({ id }) => waitsFor(id, some))).toEqual([[], ['all 1'], ['all 1'], ['2 2'], ['1 2', '2 3']]);
  });

  it('are pushed along without what is of another part', () => {
    const moves = unwrap(shiftSteps(TABLE, { stepId: 1, to: day('2026-12-05'), landing: 'exact', push: true }, KNOWN));
    expect(moves.map(({ stepId, to }) => [stepId, to])).toEqual([
      [1, '2026-12-05'],
      [2, '2026-12-08'],
      [5, '2026-12-12'],
      [6, '2026-12-12'],
      [7, '2026-12-12'],
      [8, '2026-12-19'],
    ]);
  });

  it('count for the day of a finish only with their own part, the whole job with all', () => {
    expect(TABLE.map((step) => dayThatCounts(step, TABLE).slice(8))).toEqual([
      '01',
      '04',
      '02',
      '02',
      '08',
      '09',
      '10',
      '16',
    ]);
    const whole = { ...TABLE[2], partId: null } as Step;
    expect(dayThatCounts(whole, TABLE)).toBe('2026-12-09');
  });
});

describe('the cure hold of a part', () => {
  // Poured and coated as planned.
  const MADE = TABLE.map((step) =>
    step.kind === 'lift' || step.kind === 'coat' ? { ...step, doneOn: step.day } : step,
  );
  const hold = (kind: Step['kind'], partId: number | null, on: string, some: readonly Step[] = MADE) =>
    cureHold({ kind, partId, pourId: null }, day(on), some, KNOWN);

  it('holds the part that cures and the whole job, and leaves the other part free', () => {
    const river = { until: '2026-12-04', because: 'demould', after: 'River' };
    expect(hold('coat', TOP, '2026-12-03')).toEqual(river);
    expect(hold('assembly', null, '2026-12-03')).toEqual(river);
    expect(hold('coat', BASE, '2026-12-03')).toBeUndefined();
    expect(hold('flatten', BASE, '2026-11-30')).toBeUndefined();
  });

  it('lets a part leave the shop once its own finish is cured, the whole job once every part’s is', () => {
    expect(hold('delivery', BASE, '2026-12-08')?.until).toBe('2026-12-09');
    expect(hold('delivery', BASE, '2026-12-09')).toBeUndefined();
    expect(hold('delivery', null, '2026-12-15')?.until).toBe('2026-12-16');
  });

  it('holds every part for what was poured for the whole job', () => {
    const some = MADE.map((step) => (step.pourId === 7 ? { ...step, partId: null } : step));
    expect(hold('coat', BASE, '2026-12-03', some)?.until).toBe('2026-12-04');
  });

  it('of pours put down by hand goes by the form that is still on', () => {
    const some = steps(
      { kind: 'lift', name: 'Left', day: '2026-12-01', partId: TOP, doneOn: day('2026-12-01') },
      { kind: 'demould', day: '2026-12-03', partId: TOP, doneOn: day('2026-12-02') },
      { kind: 'lift', name: 'Right', day: '2026-12-01', partId: BASE, doneOn: day('2026-12-01') },
      { kind: 'demould', day: '2026-12-05', partId: BASE },
    );
    expect(hold('flatten', TOP, '2026-12-02', some)).toBeUndefined();
    expect(hold('flatten', BASE, '2026-12-02', some)).toMatchObject({ until: '2026-12-05', after: 'Right' });
    expect(hold('assembly', null, '2026-12-02', some)?.until).toBe('2026-12-05');
  });
});

/** Any time line at all; parts are given to its steps afterwards. */
const anyLine = fc
  .array(
    fc.record({
      kind: fc.constantFrom(...STEP_KINDS),
      ahead: fc.integer({ min: -10, max: 40 }),
      sort: fc.integer({ min: 0, max: 3 }),
      pourId: fc.constantFrom(null, 7, 8),
      productId: fc.constantFrom(null, 3, 4),
      coatNr: fc.constantFrom(null, 1, 2, 3),
      done: fc.boolean(),
    }),
    { maxLength: 14 },
  )
  .map((rows) =>
    rows.map(({ ahead, done, ...row }, nr): Step => {
      const on = addDays(FACTS.today, ahead);
      return { ...row, id: nr + 1, name: `${row.kind} ${nr + 1}`, day: on, partId: null, doneOn: done ? on : null };
    }),
  );
const withParts = (line: readonly Step[], parts: readonly (number | null)[]): Step[] =>
  line.map((step, nr) => ({ ...step, partId: parts[nr % parts.length] ?? null }));
const linkWords = (some: readonly Step[]) =>
  [
    ...new Set(
      linksOf(some, KNOWN).map(({ before, after, because, leastDays, mostDays }) =>
        [before.id, after.id, because, leastDays, mostDays ?? ''].join(' '),
      ),
    ),
  ].sort();

describe('whatever is planned', () => {
  it('a job with one part, named at some of its steps or at none, is judged, pushed and held as before', () => {
    const some = fc.array(fc.constantFrom(null, TOP), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(anyLine, some, fc.integer({ min: 0, max: 30 }), (line, parts, ahead) => {
        const one = withParts(line, parts);
        expect(judgeTimeline(one, KNOWN)).toEqual(judgeTimeline(line, KNOWN));
        expect(linkWords(one)).toEqual(linkWords(line));
        const to = addDays(FACTS.today, ahead);
        for (const [nr, { id }] of line.entries()) {
          const shift = { stepId: id, to, landing: 'open' as const, push: true };
          expect(shiftSteps(one, shift, KNOWN)).toEqual(shiftSteps(line, shift, KNOWN));
          const [before, after] = [line[nr], one[nr]];
          if (!before || !after) continue;
          expect(cureHold(after, to, one, KNOWN)).toEqual(cureHold(before, to, line, KNOWN));
          expect(dayThatCounts(after, one)).toBe(dayThatCounts(before, line));
        }
      }),
    );
  });

  it('nothing of one part waits for another’s, and each part is judged as if it were alone with the whole job', () => {
    const some = fc.array(fc.constantFrom(null, TOP, BASE), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(anyLine, some, (line, parts) => {
        const all = withParts(line, parts);
        for (const { before, after } of linksOf(all, KNOWN)) {
          expect(before.partId === null || after.partId === null || before.partId === after.partId).toBe(true);
        }
        expect(linkWords(all)).toEqual([...new Set(lineOfEachPart(all).flatMap(linkWords))].sort());
      }),
    );
  });
});
