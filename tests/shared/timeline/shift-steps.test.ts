import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { unwrap } from '@/shared/result/result';
import { closedOn } from '@/shared/timeline/closed-days';
import { judgeTimeline } from '@/shared/timeline/judge-timeline';
import { type Shift, shiftSteps, withMoves } from '@/shared/timeline/shift-steps';
import { isAttended } from '@/shared/timeline/step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const KNOWN = {
  ...FACTS,
  closed: { weekdays: [0, 6], ranges: [] },
  pours: { 7: { againFromHours: 24, againToHours: 48, demouldHours: 72, fullCureDays: 7 } },
  finishes: { 3: { recoatFromHours: 12, recoatToHours: 48, cureDays: 7 } },
};
// Thursday, Friday, then the form comes off on Monday.
const PLAN = steps(
  { kind: 'lift', day: '2026-12-03', pourId: 7 },
  { kind: 'lift', day: '2026-12-04', pourId: 7 },
  { kind: 'demould', day: '2026-12-07', pourId: 7 },
  { kind: 'flatten', day: '2026-12-14', pourId: 7 },
  { kind: 'coat', day: '2026-12-15', productId: 3, coatNr: 1 },
  { kind: 'coat', day: '2026-12-16', productId: 3, coatNr: 2 },
  { kind: 'cure', day: '2026-12-23', productId: 3 },
  { kind: 'delivery', day: '2026-12-23' },
);
const shift = (some: Partial<Shift> & { stepId: number; to: Shift['to'] }, plan = PLAN) =>
  shiftSteps(plan, { landing: 'open', push: true, ...some }, KNOWN);

describe('a step put on another day', () => {
  it('moves alone where nothing is pushed', () => {
    expect(unwrap(shift({ stepId: 1, to: day('2026-12-04'), push: false }))).toEqual([
      { stepId: 1, from: '2026-12-03', to: '2026-12-04' },
    ]);
  });

  it('pushes what waits for it over the weekend, and no further than the rule asks', () => {
    expect(unwrap(shift({ stepId: 1, to: day('2026-12-04') }))).toEqual([
      { stepId: 1, from: '2026-12-03', to: '2026-12-04' },
      { stepId: 2, from: '2026-12-04', to: '2026-12-07' },
      { stepId: 3, from: '2026-12-07', to: '2026-12-10' },
    ]);
  });

  it('pushes along a whole chain, what nobody attends onto a closed day too', () => {
    const moves = unwrap(shift({ stepId: 5, to: day('2026-12-18') }));
    expect(moves.map(({ stepId, to }) => [stepId, to])).toEqual([
      [5, '2026-12-18'],
      [6, '2026-12-21'],
      [7, '2026-12-28'],
      [8, '2026-12-28'],
    ]);
    const sunday = unwrap(shiftSteps(PLAN, { stepId: 6, to: day('2026-12-20'), landing: 'exact', push: true }, KNOWN));
    expect(sunday.map(({ stepId, to }) => [stepId, to])).toEqual([
      [6, '2026-12-20'],
      [7, '2026-12-27'],
      [8, '2026-12-28'],
    ]);
  });

  it('lands on the next open day, back on the last one, or exactly where it is told', () => {
    const to = day('2026-12-12');
    expect(unwrap(shift({ stepId: 3, to }))[0]?.to).toBe('2026-12-14');
    expect(unwrap(shift({ stepId: 4, to: day('2026-12-13') }))[0]?.to).toBe('2026-12-11');
    expect(unwrap(shift({ stepId: 3, to, landing: 'exact' }))[0]?.to).toBe('2026-12-12');
  });

  it('pulls nothing when it is moved earlier', () => {
    expect(unwrap(shift({ stepId: 5, to: day('2026-12-10') }))).toEqual([
      { stepId: 5, from: '2026-12-15', to: '2026-12-10' },
    ]);
  });

  it('leaves what is done, and refuses to move it', () => {
    const done = PLAN.map((step) => (step.id === 2 ? { ...step, doneOn: day('2026-12-04') } : step));
    expect(unwrap(shift({ stepId: 1, to: day('2026-12-04') }, done)).map(({ stepId }) => stepId)).toEqual([1]);
    expect(shift({ stepId: 2, to: day('2026-12-08') }, done)).toEqual({ ok: false, error: { code: 'done-already' } });
    expect(shift({ stepId: 99, to: day('2026-12-08') })).toEqual({ ok: false, error: { code: 'no-such-step' } });
  });

  it('says nothing moves where it stays', () => {
    expect(unwrap(shift({ stepId: 4, to: day('2026-12-14') }))).toEqual([]);
  });

  it('never leaves what it pushed too early, nor on a closed day, wherever it is put', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: PLAN.length }), fc.integer({ min: 0, max: 40 }), (stepId, ahead) => {
        const moves = unwrap(shift({ stepId, to: addDays(day('2026-12-03'), ahead) }));
        const after = withMoves(PLAN, moves);
        const pushed = new Set(moves.map((move) => move.stepId).filter((id) => id !== stepId));
        for (const verdict of judgeTimeline(after, KNOWN)) {
          if (!pushed.has(verdict.stepId)) continue;
          expect(verdict.cautions.filter(({ code }) => code === 'before-ready')).toEqual([]);
        }
        for (const step of after) {
          if (pushed.has(step.id) && isAttended(step)) expect(closedOn(step.day, KNOWN.closed)).toBeUndefined();
        }
        // What waits for the step is never left before it.
        for (const { from, to, stepId: moved } of moves) if (moved !== stepId) expect(to > from).toBe(true);
      }),
    );
  });
});
