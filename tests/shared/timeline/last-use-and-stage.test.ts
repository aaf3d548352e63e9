import { describe, expect, it } from 'vitest';
import { curedOn } from '@/shared/timeline/cured-on';
import { checkStage, JOB_STAGES, stagesFrom, stateOfStage } from '@/shared/timeline/job-stage';
import { dayThatCounts, lastUse } from '@/shared/timeline/last-use';
import { inOrder } from '@/shared/timeline/step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

describe('the day of last use', () => {
  it('is the last lift or coat that is still to be done, else the last that was', () => {
    const plan = steps(
      { kind: 'lift', day: '2026-12-01', doneOn: day('2026-12-20') },
      { kind: 'coat', day: '2026-12-10' },
      { kind: 'delivery', day: '2026-12-30' },
    );
    expect(lastUse(plan)).toBe('2026-12-10');
    expect(lastUse(plan.filter(({ kind }) => kind !== 'coat'))).toBe('2026-12-20');
    expect(lastUse(plan.filter(({ kind }) => kind === 'delivery'))).toBeUndefined();
  });

  it('counts for a lift as the last lift of its own pour, for a coat as the last of its own finish', () => {
    const plan = steps(
      { kind: 'seal', day: '2026-12-01', pourId: 1 },
      { kind: 'lift', day: '2026-12-02', pourId: 1 },
      { kind: 'lift', day: '2026-12-04', pourId: 1 },
      { kind: 'lift', day: '2026-12-09', pourId: 2 },
      { kind: 'coat', day: '2026-12-11', productId: 3 },
      { kind: 'coat', day: '2026-12-12', productId: 3 },
      { kind: 'coat', day: '2026-12-13', productId: 4 },
      { kind: 'flatten', day: '2026-12-10' },
    );
    expect(plan.map((step) => dayThatCounts(step, plan).slice(8))).toEqual([
      '04',
      '04',
      '04',
      '09',
      '12',
      '12',
      '13',
      '10',
    ]);
  });

  it('is followed by the cure of whatever takes longest', () => {
    const plan = steps(
      { kind: 'lift', day: '2026-12-01', pourId: 1 },
      { kind: 'coat', day: '2026-12-05', productId: 3 },
    );
    const facts = { ...FACTS, pours: { 1: { fullCureDays: 14 } }, finishes: { 3: { cureDays: 7 } } };
    expect(curedOn(plan, facts)).toBe('2026-12-15');
    expect(curedOn(plan, FACTS)).toBeUndefined();
  });
});

describe('steps of one day', () => {
  it('stand by their sort, then in the usual order of work', () => {
    const plan = steps(
      { kind: 'delivery', day: '2026-12-01' },
      { kind: 'flatten', day: '2026-12-01' },
      { kind: 'other', day: '2026-12-01', sort: -1 },
      { kind: 'cure', day: '2026-11-30' },
    );
    expect(inOrder(plan).map(({ kind }) => kind)).toEqual(['cure', 'other', 'flatten', 'delivery']);
  });
});

describe('the stages of a job', () => {
  it('go one on or back, past a quote or a cure that is not needed', () => {
    expect(checkStage('asked', 'agreed').ok).toBe(true);
    expect(checkStage('making', 'ready').ok).toBe(true);
    expect(checkStage('ready', 'delivered').ok).toBe(true);
    expect(checkStage('delivered', 'making').ok).toBe(true);
  });

  it.each([
    ['asked', 'delivered'],
    ['asked', 'making'],
    ['agreed', 'ready'],
    ['curing', 'delivered'],
    ['delivered', 'dropped'],
    ['dropped', 'delivered'],
  ] as const)('do not jump from %s to %s', (from, to) => {
    expect(checkStage(from, to)).toEqual({ ok: false, error: { code: 'illegal-jump' } });
  });

  it('all lead somewhere, and every stage can be reached', () => {
    for (const stage of JOB_STAGES) {
      expect(stagesFrom(stage).length).toBeGreaterThan(0);
      expect(JOB_STAGES.some((from) => stagesFrom(from).includes(stage))).toBe(true);
      expect(checkStage(stage, stage)).toEqual({ ok: false, error: { code: 'no-change' } });
    }
    expect(JOB_STAGES.map(stateOfStage)).toEqual([...Array(6).fill('open'), 'done', 'dropped']);
  });
});
