import { describe, expect, it } from 'vitest';
import { cureHold } from '@/shared/timeline/cure-hold';
import type { StepKind } from '@/shared/timeline/step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const KNOWN = {
  ...FACTS,
  pours: { 7: { demouldHours: 72 }, 8: { demouldHours: 24 } },
  finishes: { 3: { cureDays: 7 } },
};
const LIFT = { kind: 'lift' as const, name: 'Lift 2', day: '2026-12-01', pourId: 7 };
const hold = (kind: StepKind, on: string, plan = steps(LIFT), pourId: number | null = null) =>
  cureHold({ kind, pourId }, day(on), plan, KNOWN);

describe('the cure hold', () => {
  it('keeps everything off the casting until its demould day, that day itself free', () => {
    for (const kind of ['demould', 'flatten', 'coat', 'assembly', 'delivery'] as const) {
      expect(hold(kind, '2026-12-03')).toEqual({ until: '2026-12-04', because: 'demould', after: 'Lift 2' });
      expect(hold(kind, '2026-12-04')).toBeUndefined();
    }
    expect(hold('other', '2026-12-01')).toBeUndefined();
    expect(hold('lift', '2026-12-01')).toBeUndefined();
  });

  it('goes by the planned demould day where that is later, and ends once the form is off', () => {
    const later = steps(LIFT, { kind: 'demould', day: '2026-12-06', pourId: 7 });
    expect(hold('flatten', '2026-12-05', later)?.until).toBe('2026-12-06');
    expect(hold('demould', '2026-12-05', later)).toBeUndefined();
    const off = steps(LIFT, { kind: 'demould', day: '2026-12-06', pourId: 7, doneOn: day('2026-12-03') });
    expect(hold('flatten', '2026-12-03', off)).toBeUndefined();
  });

  it('counts from the day the last lift was really poured, of whatever pour holds longest', () => {
    const two = steps(
      { ...LIFT, doneOn: day('2026-12-02') },
      { kind: 'lift', name: 'Inlay', day: '2026-12-08', pourId: 8 },
    );
    expect(hold('assembly', '2026-12-05', two)).toMatchObject({ until: '2026-12-09', after: 'Inlay' });
    expect(hold('flatten', '2026-12-04', two, 7)?.until).toBe('2026-12-05');
    expect(hold('flatten', '2026-12-05', two, 7)).toBeUndefined();
  });

  it('keeps a job in the shop until its finish is cured, and holds nothing else for that', () => {
    const coated = steps({ kind: 'coat', name: 'Coat 2', day: '2026-12-10', productId: 3, coatNr: 2 });
    expect(hold('delivery', '2026-12-16', coated)).toEqual({
      until: '2026-12-17',
      because: 'finish-cure',
      after: 'Coat 2',
    });
    expect(hold('delivery', '2026-12-17', coated)).toBeUndefined();
    expect(hold('assembly', '2026-12-11', coated)).toBeUndefined();
  });
});
