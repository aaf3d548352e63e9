import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import { shortMonth } from '@/shared/calendar/month-names';
import type { Precision } from '@/shared/calendar/precision';

/**
 * A date in a sentence: `12 Dec` within today's year, `5 Jan 2027` in another or when no `today` is given. A date known
 * by its month is `Jan 2027`, by its year `2027`. The month is a word, so nobody can swap it with the day.
 */
export function sayDate(
  date: CalendarDate,
  { today, precision = 'day' }: { readonly today?: CalendarDate; readonly precision?: Precision } = {},
): string {
  const { year, month, day } = partsOf(date);
  if (precision === 'year') return String(year);
  if (precision === 'month') return `${shortMonth(month)} ${year}`;
  const dayAndMonth = `${day} ${shortMonth(month)}`;
  return today && partsOf(today).year === year ? dayAndMonth : `${dayAndMonth} ${year}`;
}
