import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import { closedOn, NEVER_CLOSED, openDay, weekdayOf } from '@/shared/timeline/closed-days';
import { day } from '@/tests/support/day';

const WEEKEND = { weekdays: [0, 6], ranges: [] };
const AWAY = { weekdays: [0], ranges: [{ from: day('2026-12-24'), to: day('2027-01-03'), name: 'Holiday' }] };

describe('closed days', () => {
  it('count Sunday as 0, as the name of the day says', () => {
    const names = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
    fc.assert(
      fc.property(fc.integer({ min: -25_000, max: 60_000 }), (ahead) => {
        const some = addDays(day('1970-01-01'), ahead);
        expect(names[weekdayOf(some)]).toBe(sayWeekday(some));
      }),
    );
  });

  it('hold both ends of a stretch, which is named before the day of the week', () => {
    expect(closedOn(day('2026-12-24'), AWAY)).toEqual({ because: 'range', name: 'Holiday' });
    expect(closedOn(day('2026-12-27'), AWAY)).toEqual({ because: 'range', name: 'Holiday' });
    expect(closedOn(day('2027-01-03'), AWAY)).toEqual({ because: 'range', name: 'Holiday' });
    expect(closedOn(day('2026-12-23'), AWAY)).toBeUndefined();
    expect(closedOn(day('2027-01-04'), AWAY)).toBeUndefined();
    expect(closedOn(day('2027-01-10'), AWAY)).toEqual({ because: 'weekday' });
  });

  it('are stepped over, on or back, and an open day stays', () => {
    expect(openDay(day('2026-12-12'), WEEKEND)).toBe('2026-12-14');
    expect(openDay(day('2026-12-13'), WEEKEND, 'back')).toBe('2026-12-11');
    expect(openDay(day('2026-12-14'), WEEKEND)).toBe('2026-12-14');
    expect(openDay(day('2026-12-24'), AWAY)).toBe('2027-01-04');
    expect(openDay(day('2026-12-12'), NEVER_CLOSED)).toBe('2026-12-12');
  });

  it('leave the day as it is where the shop never opens', () => {
    expect(openDay(day('2026-12-12'), { weekdays: [0, 1, 2, 3, 4, 5, 6], ranges: [] })).toBe('2026-12-12');
  });
});
