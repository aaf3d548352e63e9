import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { shortMonth } from '@/shared/calendar/month-names';
import type { Precision } from '@/shared/calendar/precision';

/** How a book says its dates: in its own order, and without the year of `today`. */
export type SayDate = {
  readonly order: DateOrder;
  readonly today?: CalendarDate;
  readonly precision?: Precision;
};

/**
 * A date in a sentence, in the order of the book: `12 Dec` or `Dec 12` within today's year, `5 Jan 2027` or
 * `Jan 5, 2027` in another or when no `today` is given. A date known by its month is `Jan 2027`, by its year `2027`. The
 * month is a word, so nobody can swap it with the day.
 */
export function sayDate(date: CalendarDate, { order, today, precision = 'day' }: SayDate): string {
  const { year, month, day } = partsOf(date);
  if (precision === 'year') return String(year);
  if (precision === 'month') return `${shortMonth(month)} ${year}`;
  const withYear = !today || partsOf(today).year !== year;
  if (order === 'month-first') return `${shortMonth(month)} ${day}${withYear ? `, ${year}` : ''}`;
  return `${day} ${shortMonth(month)}${withYear ? ` ${year}` : ''}`;
}
