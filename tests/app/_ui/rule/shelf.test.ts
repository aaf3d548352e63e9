import { describe, expect, it } from 'vitest';
import { governingLimit, sayShelf } from '@/app/_ui/rule/shelf';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const day = (text: string) => text as CalendarDate;
const today = day('2026-11-26');
const limit = (lastGoodDay: string, governing = false) => ({
  lastGoodDay: day(lastGoodDay),
  label: 'printed',
  governing,
});

describe('governingLimit', () => {
  it('is the one marked, or the earliest where none is', () => {
    expect(governingLimit([limit('2027-08-31', true), limit('2026-12-12')])?.lastGoodDay).toBe('2027-08-31');
    expect(governingLimit([limit('2027-08-31'), limit('2026-12-12')])?.lastGoodDay).toBe('2026-12-12');
    expect(governingLimit([])).toBeUndefined();
  });
});

describe('sayShelf', () => {
  it('says how far the day of use is past the limit', () => {
    expect(
      sayShelf(
        { limits: [limit('2026-12-12')], useDay: { date: day('2026-12-19'), label: 'lift 3' } },
        { today, order: 'day-first' },
      ),
    ).toBe('Today is 26 Nov. Good to 12 Dec, 16 days from now. Needed for lift 3 on 19 Dec, 7 days past the limit.');
  });

  it('says its dates in the order of the book', () => {
    expect(sayShelf({ limits: [limit('2027-01-12')] }, { today, order: 'month-first' })).toBe(
      'Today is Nov 26. Good to Jan 12, 2027, 47 days from now.',
    );
  });

  it('takes the last good day itself as within the limit', () => {
    expect(
      sayShelf(
        { limits: [limit('2026-12-19')], useDay: { date: day('2026-12-19'), label: 'lift 3' } },
        { today, order: 'day-first' },
      ),
    ).toContain('on 19 Dec, within the limit.');
  });

  it('says what is past, what is opened and what is not known', () => {
    expect(sayShelf({ limits: [limit('2026-11-25')] }, { today, order: 'day-first' })).toContain(
      'Good until 25 Nov, 1 day ago.',
    );
    expect(sayShelf({ limits: [], openedOn: day('2025-06-12') }, { today, order: 'day-first' })).toBe(
      'Today is 26 Nov. Opened 12 Jun 2025. No limit is known.',
    );
  });
});
