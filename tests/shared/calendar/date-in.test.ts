import { describe, expect, it } from 'vitest';
import { dateIn, isTimeZone } from '@/shared/calendar/date-in';

describe('dateIn', () => {
  const instant = new Date('2026-12-11T11:00:00Z');

  it('is the day in the named zone, whatever the zone of the machine', () => {
    expect(dateIn('UTC', instant)).toBe('2026-12-11');
    expect(dateIn('Pacific/Kiritimati', instant)).toBe('2026-12-12');
    expect(dateIn('America/New_York', new Date('2026-12-11T04:59:59Z'))).toBe('2026-12-10');
    expect(dateIn('America/New_York', new Date('2026-12-11T05:00:00Z'))).toBe('2026-12-11');
  });

  it('turns at the summer midnight too', () => {
    expect(dateIn('America/New_York', new Date('2026-07-01T03:59:59Z'))).toBe('2026-06-30');
    expect(dateIn('America/New_York', new Date('2026-07-01T04:00:00Z'))).toBe('2026-07-01');
  });

  it('throws on a zone it does not know, which isTimeZone refuses', () => {
    expect(isTimeZone('Europe/Lisbon')).toBe(true);
    expect(isTimeZone('Europe/Nowhere')).toBe(false);
    expect(() => dateIn('Europe/Nowhere', instant)).toThrow();
  });
});
