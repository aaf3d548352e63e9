import { describe, expect, it } from 'vitest';
import { watchSpan } from '@/app/(shop)/watch/watch-span';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const day = (text: string) => text as CalendarDate;
const TODAY = day('2026-11-25');

describe('the stretch of Watch’s rule', () => {
  it('runs from a week before the earliest limit to a week after the latest', () => {
    expect(watchSpan([day('2026-12-30'), day('2026-10-20')], TODAY)).toEqual({ from: '2026-10-13', to: '2027-01-06' });
  });

  it('always has a week back and three weeks on', () => {
    expect(watchSpan([], TODAY)).toEqual({ from: '2026-11-18', to: '2026-12-16' });
    expect(watchSpan([day('2026-11-26')], TODAY)).toEqual({ from: '2026-11-18', to: '2026-12-16' });
  });

  it('never reaches more than 90 days back or 120 on', () => {
    expect(watchSpan([day('2020-01-01'), day('2031-01-01')], TODAY)).toEqual({ from: '2026-08-27', to: '2027-03-25' });
  });
});
