import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { type CalendarDate, parseCalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import { longMonth, monthNamed, shortMonth } from '@/shared/calendar/month-names';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDateError } from '@/shared/calendar/say-date-error';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import { unwrap } from '@/shared/result/result';

const day = (text: string): CalendarDate => unwrap(parseCalendarDate(text));
const today = day('2026-11-25');
const read = (text: string, order: 'day-first' | 'month-first' = 'day-first') => readTypedDate(text, { today, order });

describe('readTypedDate', () => {
  it.each([
    '2026-12-12',
    '2026/12/12',
    '2026.12.12',
    '20261212',
    '12122026',
    '12 Dec 2026',
    '12-DEC-2026',
    '12Dec2026',
    'Dec 12, 2026',
    'December 12th 2026',
    '2026 Dec 12',
    '12/12/2026',
    '12 dec 26',
    'EXP 12.12.2026',
    'Best before: 12 Dec 2026',
    'BBE12/12/2026',
    ' 12 – Dec – 2026 ',
    '１２ Dec ２０２６',
  ])('reads the day in %j without asking', (text) => {
    expect(read(text)).toEqual({ ok: true, value: { date: '2026-12-12', precision: 'day' } });
  });

  it.each(['2027-01', '2027/1', '01/2027', '1.2027', '202701', 'Jan 2027', 'JANUARY 2027', '2027 Jan', '01/27'])(
    'reads the month alone in %j as its last day',
    (text) => {
      expect(read(text)).toEqual({ ok: true, value: { date: '2027-01-31', precision: 'month' } });
    },
  );

  it('reads a year alone as its last day', () => {
    expect(read('2027')).toEqual({ ok: true, value: { date: '2027-12-31', precision: 'year' } });
  });

  it('carries both readings of 12/05/2026, the workshop’s own first', () => {
    const dayFirst = { date: '2026-05-12', precision: 'day' };
    const monthFirst = { date: '2026-12-05', precision: 'day' };
    expect(read('12/05/2026', 'day-first')).toEqual({
      ok: true,
      value: { ...dayFirst, ambiguous: [dayFirst, monthFirst] },
    });
    expect(read('12/05/2026', 'month-first')).toEqual({
      ok: true,
      value: { ...monthFirst, ambiguous: [monthFirst, dayFirst] },
    });
  });

  it('has nothing to ask when one part is over 12 or both ways agree', () => {
    expect(read('13/05/2026', 'month-first')).toEqual({ ok: true, value: { date: '2026-05-13', precision: 'day' } });
    expect(read('05/13/2026', 'day-first')).toEqual({ ok: true, value: { date: '2026-05-13', precision: 'day' } });
    expect(read('05/05/2026')).toEqual({ ok: true, value: { date: '2026-05-05', precision: 'day' } });
  });

  it('asks when Jan 27 may be a month or a day', () => {
    const value = unwrap(read('Jan 27'));
    expect(value).toMatchObject({ date: '2027-01-31', precision: 'month' });
    expect(value.ambiguous?.map((one) => one.date)).toEqual(['2027-01-31', '2027-01-27', '2026-01-27']);
  });

  it('asks which year is meant by a day without one, the nearer first', () => {
    expect(unwrap(read('12 Dec')).ambiguous?.map((one) => one.date)).toEqual(['2026-12-12', '2025-12-12']);
    expect(unwrap(read('29 Feb')).ambiguous?.map((one) => one.date)).toEqual(['2028-02-29', '2024-02-29']);
  });

  it('asks when six digits or three pairs can be read from either end', () => {
    expect(unwrap(read('220526')).ambiguous?.map((one) => one.date)).toEqual(['2022-05-26', '2026-05-22']);
    expect(unwrap(read('22/05/26')).ambiguous?.map((one) => one.date)).toEqual(['2026-05-22', '2022-05-26']);
    expect(unwrap(read('012027')).ambiguous).toEqual([
      { date: '2027-01-20', precision: 'day' },
      { date: '2027-01-31', precision: 'month' },
    ]);
    expect(unwrap(read('260531'))).toMatchObject({ date: '2026-05-31', precision: 'day' });
    expect(unwrap(read('991231'))).toEqual({ date: '1999-12-31', precision: 'day' });
  });

  it('says at which part a date is impossible', () => {
    expect(read('31/02/2027')).toMatchObject({ error: { code: 'no-such-day', day: 31, daysInMonth: 28 } });
    expect(read('31/02/2027', 'month-first')).toMatchObject({ error: { code: 'no-such-day', day: 31 } });
    expect(read('30 Feb')).toMatchObject({ error: { code: 'no-such-day', day: 30 } });
    expect(read('2027-13')).toMatchObject({ error: { code: 'no-such-month', month: 13 } });
    expect(read('13/13/2027')).toMatchObject({ error: { code: 'no-such-month', month: 13 } });
    expect(read('12 Dec 3026')).toMatchObject({
      error: { code: 'year-out-of-range', year: 3026, text: '12 Dec 3026' },
    });
    expect(read('Dec')).toMatchObject({ error: { code: 'year-missing' } });
    expect(read('12/05')).toMatchObject({ error: { code: 'year-missing' } });
  });

  it.each(['batch 7', '12 Foo 2026', '12:30', '1 2 3 4', '12345', '-', 'LOT 2026', '12+12+2026', '9'.repeat(60)])(
    'does not take %j for a date',
    (text) => {
      expect(read(text)).toMatchObject({ ok: false, error: { code: 'not-a-date' } });
    },
  );

  it('says an empty field is empty', () => {
    expect(read('  ')).toEqual({ ok: false, error: { code: 'empty' } });
  });

  it('reads back every date it says, in this year’s short form too', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 40_000 }), (offset) => {
        const date = addDays(today, offset);
        for (const order of ['day-first', 'month-first'] as const) {
          expect(read(sayDate(date, { order }))).toEqual({ ok: true, value: { date, precision: 'day' } });
        }
        expect(read(date.replaceAll('-', ''))).toEqual({ ok: true, value: { date, precision: 'day' } });
        const { month, year } = partsOf(date);
        const byMonth = unwrap(read(sayDate(date, { order: 'day-first', precision: 'month' })));
        expect([partsOf(byMonth.date).year, partsOf(byMonth.date).month]).toEqual([year, month]);
      }),
    );
    for (let n = -30; n <= 30; n++) {
      const date = addDays(today, n);
      const value = unwrap(read(sayDate(date, { order: 'day-first', today })));
      expect([value.date, ...(value.ambiguous ?? []).map((one) => one.date)]).toContain(date);
    }
  });

  describe('with an aim', () => {
    const aimed = (text: string, aim: 'ahead' | 'past', order: 'day-first' | 'month-first' = 'month-first') =>
      unwrap(readTypedDate(text, { today, order, aim }));

    it('takes 12/02/2026 in the workshop’s order and offers the other', () => {
      const [december, february] = [
        { date: '2026-12-02', precision: 'day' },
        { date: '2026-02-12', precision: 'day' },
      ];
      expect(aimed('12/02/2026', 'ahead')).toEqual(december);
      expect(aimed('12/02/2026', 'ahead', 'day-first')).toEqual({ ...february, instead: [december] });
      expect(aimed('12/02/2026', 'past')).toEqual({ ...december, instead: [february] });
      expect(aimed('12/02/2026', 'past', 'day-first')).toEqual(february);
      expect(aimed('02/03/2027', 'ahead').instead).toEqual([{ date: '2027-03-02', precision: 'day' }]);
    });

    it('takes a day without a year for the next such day, or the last one, today included', () => {
      expect(aimed('12 Oct', 'ahead')).toEqual({ date: '2027-10-12', precision: 'day' });
      expect(aimed('12 Oct', 'past')).toEqual({ date: '2026-10-12', precision: 'day' });
      expect(aimed('12 Dec', 'past')).toEqual({ date: '2025-12-12', precision: 'day' });
      for (const aim of ['ahead', 'past'] as const) expect(aimed('25 Nov', aim).date).toBe(today);
      expect(aimed('29 Feb', 'ahead').date).toBe('2028-02-29');
      expect(aimed('Jan 27', 'ahead')).toEqual({
        date: '2027-01-27',
        precision: 'day',
        instead: [{ date: '2027-01-31', precision: 'month' }],
      });
    });

    it('reads 12/1 in the workshop’s order', () => {
      expect(aimed('12/1', 'ahead')).toMatchObject({ date: '2026-12-01', instead: [{ date: '2027-01-12' }] });
      expect(aimed('12/1', 'ahead', 'day-first')).toMatchObject({
        date: '2027-01-12',
        instead: [{ date: '2026-12-01' }],
      });
      expect(aimed('12/27', 'ahead', 'day-first')).toMatchObject({ date: '2026-12-27', precision: 'day' });
      expect(readTypedDate('13/13', { today, order: 'day-first', aim: 'ahead' })).toMatchObject({
        error: { code: 'no-such-month' },
      });
    });

    it('understands today, tomorrow and yesterday, which no label says', () => {
      expect(['today', ' Tomorrow', 'yesterday'].map((text) => aimed(text, 'ahead').date)).toEqual([
        '2026-11-25',
        '2026-11-26',
        '2026-11-24',
      ]);
      expect(read('tomorrow')).toMatchObject({ ok: false });
      expect(readTypedDate('constructor', { today, order: 'day-first', aim: 'past' })).toMatchObject({ ok: false });
    });

    it('reads back every date it says, and never asks', () => {
      fc.assert(
        fc.property(fc.integer({ min: -20_000, max: 40_000 }), fc.constantFrom('ahead', 'past'), (offset, aim) => {
          const date = addDays(today, offset);
          expect(aimed(sayDate(date, { order: 'day-first' }), aim)).toEqual({ date, precision: 'day' });
        }),
      );
    });
  });

  it('never throws, whatever is typed, and always has words for a failure', () => {
    const alphabet = fc.constantFrom(...'0123456789 /.-,decjanExPth', 'Dec ', '2026', '/');
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(alphabet, { maxLength: 14 }).map((all) => all.join('')),
        ),
        (text) => {
          const result = read(text);
          if (!result.ok) expect(sayDateError(result.error)).toMatch(/\.$/);
          else expect(parseCalendarDate(result.value.date).ok).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('sayWeekday', () => {
  it('follows the ISO 8601 week: 1 January 2001 was a Monday', () => {
    expect(
      ['2001-01-01', '2026-11-25', '2026-12-02', '2000-12-31', '1970-01-01'].map((text) => sayWeekday(day(text))),
    ).toEqual(['Mon', 'Wed', 'Wed', 'Sun', 'Thu']);
  });
});

describe('sayDateError', () => {
  it('names the month and its days', () => {
    const result = read('30 Feb 2027');
    expect(result.ok ? '' : sayDateError(result.error)).toBe('February 2027 has 28 days, so there is no day 30.');
  });
});

describe('month names', () => {
  it('are found by three letters or more', () => {
    expect(['sep', 'Sept', 'SEPTEMBER', 'se', 'septum', 'mai'].map(monthNamed)).toEqual([
      9,
      9,
      9,
      undefined,
      undefined,
      undefined,
    ]);
    expect(shortMonth(12)).toBe('Dec');
    expect(longMonth(1)).toBe('January');
    expect(() => shortMonth(0)).toThrow(RangeError);
    expect(() => longMonth(13)).toThrow(RangeError);
  });
});
