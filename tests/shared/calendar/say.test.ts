import { describe, expect, it } from 'vitest';
import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';
import { sayLife } from '@/shared/calendar/say-life';
import { unwrap } from '@/shared/result/result';

const day = (text: string): CalendarDate => unwrap(parseCalendarDate(text));

describe('sayDate', () => {
  it('leaves this year out and says another', () => {
    expect(sayDate(day('2026-12-12'), { order: 'day-first', today: day('2026-01-01') })).toBe('12 Dec');
    expect(sayDate(day('2027-01-05'), { order: 'day-first', today: day('2026-12-31') })).toBe('5 Jan 2027');
    expect(sayDate(day('2027-01-05'), { order: 'day-first' })).toBe('5 Jan 2027');
  });

  it('says the month first in a book that has it first, and the year after a comma', () => {
    const order = 'month-first';
    expect(sayDate(day('2026-12-12'), { order, today: day('2026-01-01') })).toBe('Dec 12');
    expect(sayDate(day('2026-12-12'), { order })).toBe('Dec 12, 2026');
    expect(sayDate(day('2027-01-31'), { order, precision: 'month' })).toBe('Jan 2027');
  });

  it('says no more than is known', () => {
    expect(sayDate(day('2027-01-31'), { order: 'day-first', precision: 'month' })).toBe('Jan 2027');
    expect(sayDate(day('2027-12-31'), { order: 'day-first', precision: 'year' })).toBe('2027');
  });
});

describe('sayDays', () => {
  it.each([
    [0, 'today'],
    [1, '1 day'],
    [41, '41 days'],
    [59, '59 days'],
    [60, '1 month'],
    [61, '2 months'],
    [153, '5 months'],
    [730, '23 months'],
    [731, '2 years'],
    [-1, '1 day ago'],
    [-200, '6 months ago'],
  ])('says %i days as %s, rounded down', (days, said) => {
    expect(sayDays(days)).toBe(said);
  });

  it('throws on part of a day', () => {
    expect(() => sayDays(1.5)).toThrow(RangeError);
  });
});

describe('sayLife', () => {
  it('counts in the unit given', () => {
    expect(sayLife({ count: 18, unit: 'month' })).toBe('18 months');
    expect(sayLife({ count: 1, unit: 'year' })).toBe('1 year');
  });
});
