import { describe, expect, it } from 'vitest';
import { openSchema } from '@/app/(shop)/containers/schema';
import { lotDatesSchema } from '@/app/(shop)/lots/schema';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';

const TYPING = {
  today: '2026-11-25' as CalendarDate,
  order: 'month-first' as const,
  prefer: 'imperial' as const,
  currency: unwrap(readCurrency('USD')),
};
const opened = (text: string) =>
  openSchema(TYPING).safeParse({ label: 'C4K7VMX', opened: text, sureness: 'known', why: '' });

describe('a date that can mean two days', () => {
  it('is taken in the workshop’s order where it tells what was done', () => {
    expect(opened('11/02/2026').data?.opened.on).toBe('2026-11-02');
    expect(opened('11/2').data?.opened.on).toBe('2026-11-02');
    expect(opened('yesterday').data?.opened.on).toBe('2026-11-24');
    expect(opened('12 Dec').data?.opened.on).toBe('2025-12-12');
  });

  it('is asked about where it was read off a label', () => {
    const typed = { lotId: 1, madeOn: '', bestBefore: '11/02/2027', useBy: '', why: '' };
    const read = lotDatesSchema(TYPING).safeParse(typed);
    expect(read.error?.issues.map(({ path, message }) => [path, message])).toEqual([
      [['bestBefore'], 'This can mean more than one date. Choose which.'],
    ]);
  });
});
