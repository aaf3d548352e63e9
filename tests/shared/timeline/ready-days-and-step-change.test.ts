import { describe, expect, it } from 'vitest';
import type { StepCaution, StepVerdict } from '@/shared/timeline/judge-timeline';
import { readyDays } from '@/shared/timeline/ready-days';
import { stepChange } from '@/shared/timeline/step-change';
import { day } from '@/tests/support/day';
import { steps } from '@/tests/support/step-of-a-test';

describe('when a job is ready by its own time line', () => {
  const facts = { pours: { 1: { fullCureDays: 7 } }, finishes: { 5: { cureDays: 7 } } };
  it('is cured by the sheets or by the step that says so, its wood dry, its work done', () => {
    const line = steps(
      { kind: 'wood-dry', day: '2026-12-01' },
      { kind: 'lift', day: '2026-12-02', pourId: 1 },
      { kind: 'coat', day: '2026-12-12', productId: 5 },
      { kind: 'delivery', day: '2026-12-30' },
    );
    expect(readyDays(line, facts, [day('2026-12-03')])).toEqual({
      cured: '2026-12-19',
      dry: '2026-12-03',
      work: '2026-12-12',
    });
    const said = steps({ kind: 'cure', day: '2026-12-24' }, { kind: 'lift', day: '2026-12-02', pourId: 1 });
    expect(readyDays(said, facts).cured).toBe('2026-12-24');
  });
  it('does not wait for what is done, but for its cure, which counts from the day it was done', () => {
    const line = steps(
      { kind: 'wood-dry', day: '2026-12-01', doneOn: day('2026-11-20') },
      { kind: 'coat', day: '2026-12-12', productId: 5, doneOn: day('2026-12-10') },
    );
    expect(readyDays(line, facts)).toEqual({ cured: '2026-12-17', dry: undefined, work: undefined });
    expect(readyDays([], facts)).toEqual({ cured: undefined, dry: undefined, work: undefined });
  });
});

describe('what of a step’s verdict is otherwise', () => {
  const demould = (earliest: string): StepCaution => ({
    code: 'before-ready',
    because: 'demould',
    earliest: day(earliest),
    after: 'Lift 2',
  });
  const closed: StepCaution = { code: 'closed-day', name: 'Holiday' };
  const verdict = (word: StepVerdict['word'], ...cautions: StepCaution[]): StepVerdict => ({
    stepId: 1,
    word,
    cautions,
  });
  it('is a reason that goes or comes though the word stays', () => {
    const both = verdict('stop', demould('2026-12-04'), closed);
    const one = verdict('stop', demould('2026-12-04'));
    expect(stepChange(one, both)).toEqual({ changed: true, came: [], went: [closed] });
    expect(stepChange(both, one)).toEqual({ changed: true, came: [closed], went: [] });
    expect(stepChange(both, both)).toEqual({ changed: false, came: [], went: [] });
  });
  it('is another day of the same reason, which is said once', () => {
    const was = verdict('stop', demould('2026-12-04'));
    const now = verdict('stop', demould('2026-12-06'));
    expect(stepChange(now, was)).toEqual({ changed: true, came: [demould('2026-12-06')], went: [] });
  });
  it('is the word where nothing is left to say', () => {
    expect(stepChange(verdict('use'), verdict('stop', closed))).toEqual({ changed: true, came: [], went: [closed] });
  });
});
