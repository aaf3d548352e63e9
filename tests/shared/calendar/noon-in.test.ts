import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { dateIn } from '@/shared/calendar/date-in';
import { noonIn } from '@/shared/calendar/noon-in';
import { day } from '@/tests/support/day';

describe('noonIn', () => {
  it.each([
    ['America/New_York', '2026-11-20', '2026-11-20T17:00:00.000Z'],
    ['America/New_York', '2026-07-01', '2026-07-01T16:00:00.000Z'],
    ['Pacific/Kiritimati', '2026-12-12', '2026-12-11T22:00:00.000Z'],
    ['UTC', '2026-02-28', '2026-02-28T12:00:00.000Z'],
  ])('is noon by the clock of %s on %s', (zone, text, instant) => {
    expect(noonIn(zone, day(text)).toISOString()).toBe(instant);
  });

  it('is on that day in every zone, at any offset', () => {
    const zones = fc.constantFrom(
      'Pacific/Pago_Pago',
      'Asia/Kathmandu',
      'Australia/Adelaide',
      'Europe/London',
      'Pacific/Chatham',
    );
    fc.assert(
      fc.property(zones, fc.integer({ min: 0, max: 3000 }), (zone, on) => {
        const date = addDays(day('2024-01-01'), on);
        expect(dateIn(zone, noonIn(zone, date))).toBe(date);
      }),
    );
  });
});
