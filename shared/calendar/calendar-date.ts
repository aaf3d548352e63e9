import { err, ok, type Result } from '@/shared/result/result';

/**
 * A day on the calendar, `YYYY-MM-DD`, years 1900 to 2199. It is not an instant: it has no hour and no time zone, so it
 * reads the same in every workshop. Because of its form, plain string comparison puts it in order of time.
 */
export type CalendarDate = string & { readonly __brand: 'CalendarDate' };

/** The last day this calendar knows. */
export const LAST_DAY = '2199-12-31' as CalendarDate;

export type CalendarDateError =
  | { readonly code: 'not-a-date'; readonly text: string }
  | { readonly code: 'year-out-of-range'; readonly text: string; readonly year: number }
  | { readonly code: 'no-such-month'; readonly text: string; readonly month: number }
  | {
      readonly code: 'no-such-day';
      readonly text: string;
      readonly year: number;
      readonly month: number;
      readonly day: number;
      readonly daysInMonth: number;
    };

const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;

/** How many days the month has; month 1 to 12. Leap years by the Gregorian rule: `daysInMonth(2028, 2)` is 29. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/**
 * A calendar date from its three numbers, month 1 to 12; says which of them is impossible, the month before the day.
 * `calendarDateOf(2027, 2, 29)` fails with `no-such-day`, `daysInMonth: 28`.
 */
export function calendarDateOf(
  year: number,
  month: number,
  day: number,
  text = `${year}-${month}-${day}`,
): Result<CalendarDate, CalendarDateError> {
  if (![year, month, day].every(Number.isInteger)) return err({ code: 'not-a-date', text });
  if (year < 1900 || year > 2199) return err({ code: 'year-out-of-range', text, year });
  if (month < 1 || month > 12) return err({ code: 'no-such-month', text, month });
  const most = daysInMonth(year, month);
  if (day < 1 || day > most) return err({ code: 'no-such-day', text, year, month, day, daysInMonth: most });
  const two = (n: number) => String(n).padStart(2, '0');
  return ok(`${year}-${two(month)}-${two(day)}` as CalendarDate);
}

/**
 * Reads the stored form `YYYY-MM-DD` and nothing else (ISO 8601-1:2019, calendar date, extended format); what people
 * type goes through `readTypedDate`. Fails with the part that cannot be: `not-a-date` for another form,
 * `year-out-of-range` outside 1900 to 2199, `no-such-month`, `no-such-day`. `parseCalendarDate('2026-12-12')` is that day.
 */
export function parseCalendarDate(text: string): Result<CalendarDate, CalendarDateError> {
  const found = FORM.exec(text);
  if (!found) return err({ code: 'not-a-date', text });
  return calendarDateOf(Number(found[1]), Number(found[2]), Number(found[3]), text);
}

/** The year, month (1 to 12) and day of a calendar date. `partsOf('2026-12-05')` is `{ year: 2026, month: 12, day: 5 }`. */
export function partsOf(date: CalendarDate): { readonly year: number; readonly month: number; readonly day: number } {
  return { year: Number(date.slice(0, 4)), month: Number(date.slice(5, 7)), day: Number(date.slice(8, 10)) };
}
