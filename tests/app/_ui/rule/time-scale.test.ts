import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timeScale } from '@/app/_ui/rule/time-scale';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const day = (text: string) => text as CalendarDate;

describe('timeScale', () => {
  it('gives each day a cell, from the start of the first to the end of the last', () => {
    const scale = timeScale(day('2027-01-01'), day('2027-01-10'));
    expect(scale.days).toBe(10);
    expect(scale.startOf(day('2027-01-01'))).toBe(0);
    expect(scale.middleOf(day('2027-01-01'))).toBeCloseTo(0.05, 10);
    expect(scale.endOf(day('2027-01-10'))).toBe(1);
  });

  it('keeps the line of a day of use inside the band whose last good day it is', () => {
    const scale = timeScale(day('2026-11-23'), day('2026-12-21'));
    expect(scale.middleOf(day('2026-12-12'))).toBeLessThan(scale.endOf(day('2026-12-12')));
    expect(scale.middleOf(day('2026-12-13'))).toBeGreaterThan(scale.endOf(day('2026-12-12')));
  });

  it('puts days outside before 0 and after 1, and says that they are outside', () => {
    const scale = timeScale(day('2026-12-01'), day('2026-12-31'));
    expect(scale.endOf(day('2026-11-29'))).toBeLessThan(0);
    expect(scale.startOf(day('2027-01-02'))).toBeGreaterThan(1);
    expect([scale.has(day('2026-11-30')), scale.has(day('2026-12-01')), scale.has(day('2026-12-31'))]).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('shows one day when the end is not after the start', () => {
    expect(timeScale(day('2026-12-01'), day('2026-11-01'))).toMatchObject({ days: 1, to: '2026-12-01' });
  });

  it('never lets a later day stand before an earlier one', () => {
    fc.assert(
      fc.property(fc.nat(1500), fc.nat(2000), fc.nat(2000), (length, a, b) => {
        const from = day('2026-01-01');
        const scale = timeScale(from, addDays(from, length));
        const [early, late] = a < b ? [a, b] : [b, a];
        expect(scale.startOf(addDays(from, early))).toBeLessThanOrEqual(scale.startOf(addDays(from, late)));
      }),
    );
  });
});
