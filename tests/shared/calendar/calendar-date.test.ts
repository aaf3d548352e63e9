import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarDateOf, daysInMonth, parseCalendarDate, partsOf } from '@/shared/calendar/calendar-date';

describe('parseCalendarDate', () => {
  it('reads a real day', () => {
    expect(parseCalendarDate('2026-12-12')).toEqual({ ok: true, value: '2026-12-12' });
  });

  it.each(['2026-1-2', '20261212', '2026-12-12T00:00', ' 2026-12-12', '2026-12-12\n', '', 'today', '２０２６-12-12'])(
    'refuses the form %j',
    (text) => {
      expect(parseCalendarDate(text)).toEqual({ ok: false, error: { code: 'not-a-date', text } });
    },
  );

  it('names the part that cannot be', () => {
    expect(parseCalendarDate('2026-13-01')).toMatchObject({ error: { code: 'no-such-month', month: 13 } });
    expect(parseCalendarDate('2026-00-01')).toMatchObject({ error: { code: 'no-such-month', month: 0 } });
    expect(parseCalendarDate('2027-02-29')).toMatchObject({ error: { code: 'no-such-day', day: 29, daysInMonth: 28 } });
    expect(parseCalendarDate('2026-04-00')).toMatchObject({ error: { code: 'no-such-day', day: 0, daysInMonth: 30 } });
    expect(parseCalendarDate('1899-12-31')).toMatchObject({ error: { code: 'year-out-of-range', year: 1899 } });
    expect(parseCalendarDate('2200-01-01')).toMatchObject({ error: { code: 'year-out-of-range', year: 2200 } });
  });

  it('never throws, and gives back exactly what it accepts', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^\d{4}-\d{2}-\d{2}$/)), (text) => {
        const read = parseCalendarDate(text);
        if (read.ok) {
          expect(read.value).toBe(text);
          const { year, month, day } = partsOf(read.value);
          expect(calendarDateOf(year, month, day)).toEqual(read);
        }
      }),
    );
  });

  it('refuses numbers that are not whole', () => {
    expect(calendarDateOf(2026, 1.5, 1)).toMatchObject({ error: { code: 'not-a-date' } });
    expect(calendarDateOf(2026, 1, Number.NaN)).toMatchObject({ error: { code: 'not-a-date' } });
  });

  it('gives February 29 days only in leap years', () => {
    expect([1900, 2000, 2026, 2028, 2100].map((year) => daysInMonth(year, 2))).toEqual([28, 29, 28, 29, 28]);
  });
});
