import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roomFor, ruleTicks } from '@/app/_ui/rule/rule-ticks';
import { timeScale } from '@/app/_ui/rule/time-scale';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const day = (text: string) => text as CalendarDate;
const words = (from: string, to: string, width: number) =>
  ruleTicks(timeScale(day(from), day(to)), width).labels.map((label) => label.words);

describe('ruleTicks', () => {
  it('counts four weeks by day, with words on the Mondays', () => {
    const { short, long } = ruleTicks(timeScale(day('2026-11-23'), day('2026-12-21')), 290);
    expect(short).toHaveLength(29);
    expect(long).toHaveLength(5);
    expect(words('2026-11-23', '2026-12-21', 290)).toEqual(['23 Nov', '30', '7 Dec', '14']);
  });

  it('says the first day where there is room before the first Monday', () => {
    expect(words('2026-11-24', '2026-12-08', 290)).toEqual(['24 Nov', '30 Nov']);
  });

  it('counts half a year by week, with words on the months', () => {
    const { short, long } = ruleTicks(timeScale(day('2026-11-26'), day('2027-04-20')), 290);
    expect(short).toHaveLength(21);
    expect(long).toHaveLength(5);
    expect(words('2026-11-26', '2027-04-20', 290)).toEqual(['Dec', '2027', 'Feb', 'Mar', 'Apr']);
  });

  it('counts three years by month, with words on the years', () => {
    const { short } = ruleTicks(timeScale(day('2025-12-01'), day('2028-11-30')), 290);
    expect(short).toHaveLength(36);
    expect(words('2025-12-01', '2028-11-30', 290)).toEqual(['Jan 2026', '2027', '2028']);
  });

  it('never lets words touch or run off the end, from two weeks to three years, from phone to wall', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 14, max: 1100 }),
        fc.integer({ min: 260, max: 1600 }),
        (start, length, width) => {
          const from = addDays(day('2024-01-01'), start);
          const { labels } = ruleTicks(timeScale(from, addDays(from, length)), width);
          expect(labels.length).toBeGreaterThan(0);
          let free = 0;
          for (const label of labels) {
            expect(label.at * width).toBeGreaterThanOrEqual(free);
            free = label.at * width + roomFor(label.words);
          }
          expect(free).toBeLessThanOrEqual(width);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('keeps ticks at least four pixels apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: 14, max: 1100 }), fc.integer({ min: 290, max: 1600 }), (length, width) => {
        const from = day('2026-03-05');
        const { short } = ruleTicks(timeScale(from, addDays(from, length)), width);
        for (let index = 1; index < short.length; index += 1) {
          expect(((short[index] ?? 0) - (short[index - 1] ?? 0)) * width).toBeGreaterThan(4);
        }
      }),
    );
  });
});
