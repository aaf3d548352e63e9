import { daysInMonth } from '@/shared/calendar/calendar-date';

/**
 * The first fault in the four digits `MMDD` of a year, with its index. Day 00, a whole month, passes where allowed.
 * `checkMonthDay(2020, '0230', true)` is `{ code: 'bad-day', at: 2 }`.
 */
export function checkMonthDay(
  year: number,
  monthDay: string,
  wholeMonth: boolean,
): { readonly code: 'bad-month' | 'bad-day'; readonly at: number } | undefined {
  const month = Number(monthDay.slice(0, 2));
  if (month < 1 || month > 12) return { code: 'bad-month', at: 0 };
  const day = Number(monthDay.slice(2, 4));
  if (day > daysInMonth(year, month) || (day === 0 && !wholeMonth)) return { code: 'bad-day', at: 2 };
  return undefined;
}
