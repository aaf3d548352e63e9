import { describe, expect, it } from 'vitest';
import { cureHold } from '@/shared/timeline/cure-hold';
import type { StepKind } from '@/shared/timeline/step';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const KNOWN = {
  ...FACTS,
  pours: { 7: { demouldHours: 72, fullCureDays: 7 }, 8: { demouldHours: 24 } },
  finishes: { 3: { cureDays: 7 } },
};
const LIFT = { kind: 'lift' as const, name: 'Lift 2', day: '2026-12-01', pourId: 7, doneOn: day('2026-12-01') };
const hold = (kind: StepKind, on: string, plan = steps(LIFT), pourId: number | null = null) =>
  cureHold({ kind, partId: null, pourId }, day(on), plan, KNOWN);

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
      { kind: 'lift', name: 'Inlay', day: '2026-12-08', pourId: 8, doneOn: day('2026-12-08') },
    );
    expect(hold('assembly', '2026-12-05', two)).toMatchObject({ until: '2026-12-09', after: 'Inlay' });
    expect(hold('flatten', '2026-12-04', two, 7)?.until).toBe('2026-12-05');
    expect(hold('flatten', '2026-12-05', two, 7)).toBeUndefined();
  });

  it('keeps a job in the shop until its finish is cured, and holds nothing else for that', () => {
    const coat = { kind: 'coat' as const, name: 'Coat 2', day: '2026-12-10', productId: 3, coatNr: 2 };
    const coated = steps({ ...coat, doneOn: day('2026-12-10') });
    expect(hold('delivery', '2026-12-16', coated)).toEqual({
      until: '2026-12-17',
      because: 'finish-cure',
      after: 'Coat 2',
    });
    expect(hold('delivery', '2026-12-17', coated)).toBeUndefined();
    expect(hold('assembly', '2026-12-11', coated)).toBeUndefined();
    // Its day has passed, and it is not on.
    expect(hold('delivery', '2026-12-20', steps(coat))?.until).toBe('2026-12-27');
  });

  it('holds whatever was planned for the casting from its last lift on, and nothing that comes before', () => {
    const other = (on: string, planned: string, pourId: number | null = null) =>
      cureHold({ kind: 'other', partId: null, pourId, day: day(planned) }, day(on), steps(LIFT), KNOWN);
    expect(other('2026-12-02', '2026-12-02')).toEqual({ until: '2026-12-04', because: 'demould', after: 'Lift 2' });
    expect(other('2026-12-02', '2026-11-30')).toBeUndefined();
    expect(other('2026-12-02', '2026-11-30', 7)?.until).toBe('2026-12-04');
  });

  it('calls nothing cured before the sheet’s full cure, of the resin or of the finish, though the form is off', () => {
    const off = steps(LIFT, { kind: 'demould', day: '2026-12-04', pourId: 7, doneOn: day('2026-12-04') });
    const cure = (on: string, plan = off, pourId: number | null = 7) =>
      cureHold({ kind: 'cure', partId: null, pourId, day: day('2026-12-20') }, day(on), plan, KNOWN);
    expect(cure('2026-12-07')).toEqual({ until: '2026-12-08', because: 'full-cure', after: 'Lift 2' });
    expect(cure('2026-12-08')).toBeUndefined();
    const coated = steps({ kind: 'coat', name: 'Coat 1', day: '2026-12-10', productId: 3, doneOn: day('2026-12-10') });
    expect(cure('2026-12-16', coated, null)).toMatchObject({ until: '2026-12-17', because: 'finish-cure' });
    expect(cure('2026-12-17', coated, null)).toBeUndefined();
  });

  it('goes on holding while a lift is not poured, however long ago it was planned', () => {
    const two = steps(LIFT, { kind: 'lift', name: 'Lift 3', day: '2026-12-02', pourId: 7 });
    for (const kind of ['demould', 'flatten', 'coat', 'cure', 'delivery'] as const) {
      expect(hold(kind, '2027-03-01', two)).toMatchObject({ because: 'not-poured', after: 'Lift 3' });
    }
    expect(hold('demould', '2026-11-30', two)?.until).toBe('2026-12-05');
    const unsaid = steps({ kind: 'lift', name: 'Lift', day: '2026-12-01', pourId: 9 });
    expect(hold('demould', '2026-12-01', unsaid)?.until).toBe('2026-12-02');
  });

  it('goes by the hour on the last day where hours are known: 72 h after a pour at 18:00 is 18:00', () => {
    const [lift] = steps(LIFT);
    const at = (now: number, today = '2026-12-04') =>
      cureHold({ kind: 'demould', partId: null, pourId: 7 }, day('2026-12-04'), steps(LIFT), {
        ...KNOWN,
        today: day(today),
        hours: { now, pouredAt: { [lift?.id ?? 0]: 18 * 60 } },
      });
    expect(at(17 * 60 + 59)).toMatchObject({ until: '2026-12-04', untilMinute: 18 * 60 });
    expect(at(18 * 60)).toBeUndefined();
    // Of a day that has passed the hour is not asked.
    expect(at(8 * 60, '2026-12-05')).toBeUndefined();
  });
});
