import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { addLife } from '@/shared/calendar/add-life';
import { addMonths } from '@/shared/calendar/add-months';
import { type CalendarDate, LAST_DAY, parseCalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import { compareDates } from '@/shared/calendar/compare-dates';
import { daysBetween } from '@/shared/calendar/days-between';
import { LIFE_UNITS, parseLife } from '@/shared/calendar/life';
import { firstDayOf, lastDayOf } from '@/shared/calendar/precision';
import { unwrap } from '@/shared/result/result';

const day = (text: string): CalendarDate => unwrap(parseCalendarDate(text));
const anyDay = fc.integer({ min: 0, max: 73_000 }).map((n) => addDays(day('1960-01-01'), n));

describe('addDays and daysBetween', () => {
  it('cross month, leap day and year', () => {
    expect(addDays(day('2028-02-28'), 2)).toBe('2028-03-01');
    expect(addDays(day('2026-12-31'), 1)).toBe('2027-01-01');
    expect(addDays(day('2026-01-01'), -1)).toBe('2025-12-31');
    expect(daysBetween(day('2026-12-12'), day('2026-12-19'))).toBe(7);
    expect(daysBetween(day('2026-12-19'), day('2026-12-12'))).toBe(-7);
  });

  it('count a day across each change of the clocks as one day', () => {
    for (const change of ['2026-03-08', '2026-11-01', '2026-03-29', '2026-10-25']) {
      expect(daysBetween(day(change), addDays(day(change), 1))).toBe(1);
    }
  });

  it('undo one another', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (a, b) => {
        expect(addDays(a, daysBetween(a, b))).toBe(b);
      }),
    );
  });

  it('throw on part of a day and outside the calendar', () => {
    expect(() => addDays(day('2026-01-01'), 0.5)).toThrow(RangeError);
    expect(() => addDays(LAST_DAY, 1)).toThrow();
  });
});

describe('addMonths', () => {
  it('clamps to the end of a shorter month', () => {
    expect(addMonths(day('2026-08-31'), 6)).toBe('2027-02-28');
    expect(addMonths(day('2027-08-31'), 6)).toBe('2028-02-29');
    expect(addMonths(day('2028-02-29'), 12)).toBe('2029-02-28');
    expect(addMonths(day('2026-01-15'), -1)).toBe('2025-12-15');
  });

  it('keeps the day wherever the month has it, and always lands in the right month', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -240, max: 240 }), (start, months) => {
        const a = partsOf(start);
        const b = partsOf(addMonths(start, months));
        expect(b.year * 12 + b.month - (a.year * 12 + a.month)).toBe(months);
        expect(b.day === a.day || b.day === partsOf(lastDayOf(addMonths(start, months), 'month')).day).toBe(true);
      }),
    );
  });
});

describe('addLife', () => {
  it('counts days and weeks, and goes by the calendar for months and years', () => {
    expect(addLife(day('2026-02-01'), { count: 30, unit: 'day' })).toBe('2026-03-03');
    expect(addLife(day('2026-02-01'), { count: 6, unit: 'week' })).toBe('2026-03-15');
    expect(addLife(day('2026-08-31'), { count: 6, unit: 'month' })).toBe('2027-02-28');
    expect(addLife(day('2028-02-29'), { count: 1, unit: 'year' })).toBe('2029-02-28');
  });

  it('ends at the end of the calendar rather than past it', () => {
    for (const unit of LIFE_UNITS) expect(addLife(day('2199-06-15'), { count: 99_999, unit })).toBe(LAST_DAY);
    expect(addLife(day('2199-06-15'), { count: 6, unit: 'month' })).toBe('2199-12-15');
    expect(addLife(day('2199-06-15'), { count: 7, unit: 'month' })).toBe(LAST_DAY);
  });

  it('throws on a negative or broken count', () => {
    expect(() => addLife(day('2026-01-01'), { count: -1, unit: 'day' })).toThrow(RangeError);
    expect(() => addLife(day('2026-01-01'), { count: 1.5, unit: 'month' })).toThrow(RangeError);
  });

  it('never ends sooner for a longer life of the same unit', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 600 }), fc.constantFrom(...LIFE_UNITS), (start, count, unit) => {
        expect(addLife(start, { count: count + 1, unit }) >= addLife(start, { count, unit })).toBe(true);
      }),
    );
  });
});

describe('parseLife', () => {
  it('takes a whole count from 1 to 50 years', () => {
    expect(parseLife(18, 'month')).toEqual({ ok: true, value: { count: 18, unit: 'month' } });
    expect(parseLife(600, 'month').ok).toBe(true);
    expect(parseLife(601, 'month')).toMatchObject({ error: { code: 'life-too-long', mostYears: 50 } });
    expect(parseLife(0, 'day')).toMatchObject({ error: { code: 'life-too-short' } });
    expect(parseLife(1.5, 'year')).toMatchObject({ error: { code: 'life-not-whole' } });
  });
});

describe('precision', () => {
  it('spans the day, the month or the year', () => {
    expect(lastDayOf(day('2028-02-03'), 'month')).toBe('2028-02-29');
    expect(firstDayOf(day('2028-02-29'), 'month')).toBe('2028-02-01');
    expect(lastDayOf(day('2028-02-03'), 'year')).toBe('2028-12-31');
    expect(firstDayOf(day('2028-02-03'), 'year')).toBe('2028-01-01');
    expect(lastDayOf(day('2028-02-03'), 'day')).toBe('2028-02-03');
    expect(firstDayOf(day('2028-02-03'), 'day')).toBe('2028-02-03');
  });
});

describe('compareDates', () => {
  it('sorts in order of time', () => {
    const days = [day('2027-01-01'), day('2026-12-31'), day('2026-02-01')];
    expect(days.sort(compareDates)).toEqual(['2026-02-01', '2026-12-31', '2027-01-01']);
    expect(compareDates(day('2026-02-01'), day('2026-02-01'))).toBe(0);
  });
});
