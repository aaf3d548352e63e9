import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { readingDue } from '@/shared/wood/reading-due';

const read = (mcTenths: number, promised: boolean) =>
  readingDue({ promised, mcTenths, lastRead: '2026-11-18' as CalendarDate });

// Common practice: weekly while wood waits in the shop for its job, monthly while it dries.
describe('the next moisture reading', () => {
  it('is a week after the last while the wood is promised, dry or wet', () => {
    expect(read(85, true)).toBe('2026-11-25');
    expect(read(180, true)).toBe('2026-11-25');
  });

  it('is thirty days after the last while it reads above 10.0 % and dries', () => {
    expect(read(101, false)).toBe('2026-12-18');
  });

  it('is asked of nobody where it is dry and promised to nobody', () => {
    expect(read(100, false)).toBeUndefined();
  });

  it('is asked of what was never read', () => {
    expect(readingDue({ promised: false, lastRead: null, mcTenths: null })).toBe('never-read');
  });
});
