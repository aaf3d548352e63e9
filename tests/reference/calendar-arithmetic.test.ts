import {
  differenceInCalendarDays,
  format,
  getDaysInMonth,
  isValid,
  lastDayOfMonth,
  parse,
  addDays as referenceAddDays,
  addMonths as referenceAddMonths,
  addWeeks as referenceAddWeeks,
  addYears as referenceAddYears,
} from 'date-fns';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { addLife } from '@/shared/calendar/add-life';
import { addMonths } from '@/shared/calendar/add-months';
import { type CalendarDate, daysInMonth, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { lastDayOf } from '@/shared/calendar/precision';
import { unwrap } from '@/shared/result/result';

// Reference: date-fns 4, an independent library, asked in UTC. In the process's own zone it cannot serve: run in
// Pacific/Kiritimati it has no 31 Dec 1994, the day those islands moved across the date line.
const zoneBefore = process.env.TZ;
beforeAll(() => {
  process.env.TZ = 'UTC';
  expect(new Date(1994, 11, 31).getTimezoneOffset()).toBe(0);
});
afterAll(() => {
  if (zoneBefore === undefined) delete process.env.TZ;
  else process.env.TZ = zoneBefore;
});

const noon = (date: CalendarDate): Date => parse(`${date} 12:00`, 'yyyy-MM-dd HH:mm', new Date(0));
const text = (date: Date): string => format(date, 'yyyy-MM-dd');

/** A small seeded generator (mulberry32), so that every run tries the same dates. */
function generator(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

const FIRST = unwrap(parseCalendarDate('1930-01-01'));
const next = generator(20261212);
const CASES = Array.from({ length: 4000 }, () => ({
  date: addDays(FIRST, next(82_000)),
  other: addDays(FIRST, next(82_000)),
  days: next(6000) - 3000,
  months: next(600) - 300,
}));

describe('calendar arithmetic agrees with date-fns on 4,000 seeded dates', () => {
  it('adds days', () => {
    for (const { date, days } of CASES) expect(addDays(date, days)).toBe(text(referenceAddDays(noon(date), days)));
  });

  it('adds months, clamped at the end of a short month', () => {
    for (const { date, months } of CASES) {
      expect(addMonths(date, months)).toBe(text(referenceAddMonths(noon(date), months)));
    }
  });

  it('adds lives in days, weeks, months and years', () => {
    for (const { date, months } of CASES) {
      const count = Math.abs(months) % 40;
      expect(addLife(date, { count, unit: 'day' })).toBe(text(referenceAddDays(noon(date), count)));
      expect(addLife(date, { count, unit: 'week' })).toBe(text(referenceAddWeeks(noon(date), count)));
      expect(addLife(date, { count, unit: 'month' })).toBe(text(referenceAddMonths(noon(date), count)));
      const years = count % 20;
      expect(addLife(date, { count: years, unit: 'year' })).toBe(text(referenceAddYears(noon(date), years)));
    }
  });

  it('counts the days between', () => {
    for (const { date, other } of CASES) {
      expect(daysBetween(date, other)).toBe(differenceInCalendarDays(noon(other), noon(date)));
    }
  });

  it('finds the end of the month', () => {
    for (const { date } of CASES) expect(lastDayOf(date, 'month')).toBe(text(lastDayOfMonth(noon(date))));
  });

  it('knows the length of every month from 1900 to 2199', () => {
    for (let year = 1900; year < 2200; year++) {
      for (let month = 1; month <= 12; month++) {
        expect(daysInMonth(year, month)).toBe(getDaysInMonth(new Date(year, month - 1, 15)));
      }
    }
  });

  it('accepts exactly the dates that exist', () => {
    const draw = generator(7);
    for (let n = 0; n < 4000; n++) {
      const two = (value: number) => String(value).padStart(2, '0');
      const tried = `${1900 + draw(300)}-${two(draw(14))}-${two(draw(33))}`;
      expect([tried, parseCalendarDate(tried).ok]).toEqual([tried, isValid(parse(tried, 'yyyy-MM-dd', new Date(0)))]);
    }
  });
});
