import { describe, expect, it } from 'vitest';
import { parseCalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import { fullYear } from '@/shared/calendar/full-year';
import { lastDayOf } from '@/shared/calendar/precision';
import { unwrap } from '@/shared/result/result';
import { day, TODAY } from '@/tests/shared/shelf-life/fixtures';

describe('GS1 General Specifications: determination of the century', () => {
  // The rule as in GS1's own published code: the difference of the two digits from this year's, 51 to 99 the century
  // before, -99 to -50 the one after. The two columns are for 2026; the edges were recomputed.
  it.each([
    [76, 2076],
    [77, 1977],
    [99, 1999],
    [0, 2000],
    [26, 2026],
    [27, 2027],
    [28, 2028],
    [75, 2075],
    [5, 2005],
  ])('%i read in 2026 is %i', (twoDigits, year) => {
    expect(fullYear(twoDigits, TODAY)).toBe(year);
  });

  it('reaches 49 years back and 50 on from any year', () => {
    for (const today of ['1998-06-01', '2000-01-01', '2026-11-25', '2049-12-31', '2050-01-01', '2099-12-31']) {
      const thisYear = partsOf(day(today)).year;
      for (let twoDigits = 0; twoDigits < 100; twoDigits++) {
        const year = fullYear(twoDigits, day(today));
        expect(year % 100).toBe(twoDigits);
        expect(year - thisYear).toBeGreaterThanOrEqual(-49);
        expect(year - thisYear).toBeLessThanOrEqual(50);
      }
    }
  });
});

describe('GS1 General Specifications: day 00 of a date is the last day of its month', () => {
  // 270200 and 280200 read in 2026 (the rule of day 00 is from memory; the values were recomputed).
  it.each([
    ['2027-02', '2027-02-28'],
    ['2028-02', '2028-02-29'],
    ['2026-04', '2026-04-30'],
    ['2026-12', '2026-12-31'],
  ])('%s without a day is %s', (month, last) => {
    expect(lastDayOf(day(`${month}-01`), 'month')).toBe(last);
  });
});

describe('GS1 syntax dictionary: yymmd0', () => {
  // The dictionary's own accepted and refused examples, with the day 00 left to the month rule above.
  it.each([
    ['200229', true],
    ['200230', false],
    ['200431', false],
    ['201310', false],
    ['200132', false],
  ])('%s exists: %s', (digits, exists) => {
    const year = fullYear(Number(digits.slice(0, 2)), TODAY);
    const read = parseCalendarDate(`${year}-${digits.slice(2, 4)}-${digits.slice(4, 6)}`);
    expect(read.ok).toBe(exists);
    if (exists) expect(unwrap(read)).toBe('2020-02-29');
  });
});
