import { type CalendarDate, type CalendarDateError, calendarDateOf, partsOf } from '@/shared/calendar/calendar-date';
import type { DateToken } from '@/shared/calendar/date-tokens';
import { daysBetween } from '@/shared/calendar/days-between';
import { fullYear } from '@/shared/calendar/full-year';
import { lastDayOf, type Precision } from '@/shared/calendar/precision';
import { ok, type Result } from '@/shared/result/result';

export type DateOrder = 'day-first' | 'month-first';

/** One way to read a typed date; a month or a year alone stands for its last day. */
export type DateReading = { readonly date: CalendarDate; readonly precision: Precision };

export type ReadingAttempt = Result<DateReading, CalendarDateError | { readonly code: 'year-missing' }>;

/**
 * What a date is typed for. One that is to come (`ahead`, a day of use) or has been (`past`, a day of opening) is taken in
 * the workshop's own order, and its year may be left out. Without an aim it is read off a label: nothing is guessed.
 */
export type DateAim = 'ahead' | 'past';

type Context = { readonly today: CalendarDate; readonly order: DateOrder; readonly aim?: DateAim };

/** Two digits are taken for a year written first, or without a day, only this near to today: tins are not older. */
const NEAR_YEARS = 10;

function attempt(year: number, month?: number, day?: number): ReadingAttempt {
  const precision = month === undefined ? 'year' : day === undefined ? 'month' : 'day';
  const made = calendarDateOf(year, month ?? 1, day ?? 1);
  return made.ok ? ok({ date: lastDayOf(made.value, precision), precision }) : made;
}

function isNear(year: number, today: CalendarDate): boolean {
  return Math.abs(year - partsOf(today).year) <= NEAR_YEARS;
}

/** Both ways round of two numbers that are a day and a month, the workshop's own way first. */
function dayAndMonth(year: number, a: number, b: number, order: DateOrder): ReadingAttempt[] {
  const dayFirst = attempt(year, b, a);
  const monthFirst = attempt(year, a, b);
  return order === 'day-first' ? [dayFirst, monthFirst] : [monthFirst, dayFirst];
}

/**
 * A day and month without a year: the last such day up to today and the next after it, the nearer first. With an aim it is
 * the next such day or the last one, today included.
 */
function withoutYear(month: number, day: number, { today, aim }: Omit<Context, 'order'>): ReadingAttempt[] {
  const thisYear = partsOf(today).year;
  const inReach = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((step) => attempt(thisYear + step, month, day));
  const dates = inReach.flatMap((one) => (one.ok ? [one.value] : []));
  const before = dates.filter((one) => one.date <= today).at(-1);
  const after = dates.find((one) => one.date > today);
  if (!before || !after) return inReach.slice(4, 5);
  if (aim) return [ok(aim === 'past' || before.date === today ? before : after)];
  const nearerFirst = daysBetween(before.date, today) <= daysBetween(today, after.date);
  return (nearerFirst ? [before, after] : [after, before]).map(ok);
}

function runTogether(text: string, { today, order }: Context): ReadingAttempt[] {
  const at = (from: number, to: number) => Number(text.slice(from, to));
  if (text.length === 8) {
    const yearFirst = attempt(at(0, 4), at(4, 6), at(6, 8));
    const dayMonth = dayAndMonth(at(4, 8), at(0, 2), at(2, 4), order);
    return yearFirst.ok || !dayMonth.some((one) => one.ok) ? [yearFirst] : dayMonth;
  }
  const all = [
    attempt(fullYear(at(0, 2), today), at(2, 4), at(4, 6)),
    ...dayAndMonth(fullYear(at(4, 6), today), at(0, 2), at(2, 4), order),
    attempt(at(0, 4), at(4, 6)),
    attempt(at(2, 6), at(0, 2)),
  ];
  const near = all.filter((one) => one.ok && isNear(partsOf(one.value.date).year, today));
  return near.length > 0 ? near : all;
}

/**
 * Every way the pieces can be read, the likeliest first, each either a reading or the part that cannot be; an empty list
 * when they are no date at all. `readTypedDate` chooses among them.
 */
export function dateReadings(tokens: readonly DateToken[], context: Context): readonly ReadingAttempt[] {
  const { today, order, aim } = context;
  const shape = tokens
    .map((one) => (one.kind === 'month' ? 'M' : one.length <= 2 ? 'n' : String(one.length)))
    .join(' ');
  const [a = 0, b = 0, c = 0] = tokens.map((one) => (one.kind === 'month' ? one.month : one.value));
  const first = tokens[0];
  switch (shape) {
    case '8':
    case '6':
      return first?.kind === 'digits' ? runTogether(first.text, context) : [];
    case '4':
      return [attempt(a)];
    case '4 n':
    case '4 M':
      return [attempt(a, b)];
    case 'n 4':
    case 'M 4':
      return [attempt(b, a)];
    case '4 n n':
    case '4 M n':
      return [attempt(a, b, c)];
    case 'n n 4':
      return dayAndMonth(c, a, b, order);
    case 'n M 4':
      return [attempt(c, b, a)];
    case 'M n 4':
      return [attempt(c, a, b)];
    case 'n M n':
      return [attempt(fullYear(c, today), b, a)];
    case 'M n n':
      return [attempt(fullYear(c, today), a, b)];
    case 'n n n': {
      const yearFirst = isNear(fullYear(a, today), today) ? [attempt(fullYear(a, today), b, c)] : [];
      return [...dayAndMonth(fullYear(c, today), a, b, order), ...yearFirst];
    }
    case 'n n': {
      if (aim) {
        const days = [withoutYear(b, a, context), withoutYear(a, b, context)].map(([only]) => only ?? attempt(0, a, b));
        const [own, other] = order === 'day-first' ? days : days.toReversed();
        const month = isNear(fullYear(b, today), today) ? [attempt(fullYear(b, today), a)] : [];
        return [own, ...month, other].flatMap((one) => one ?? []);
      }
      if (!isNear(fullYear(b, today), today)) return [{ ok: false, error: { code: 'year-missing' } }];
      const asDay =
        order === 'month-first' && a >= 1 && a <= 12 && b >= 1 ? withoutYear(a, b, context).slice(0, 1) : [];
      return [attempt(fullYear(b, today), a), ...asDay];
    }
    case 'n M':
      return withoutYear(b, a, context);
    case 'M n': {
      const asMonth = isNear(fullYear(b, today), today) ? [attempt(fullYear(b, today), a)] : [];
      const asDay = withoutYear(a, b, context);
      return aim ? [...asDay, ...asMonth] : [...asMonth, ...asDay];
    }
    case 'M':
    case 'n':
      return [{ ok: false, error: { code: 'year-missing' } }];
    default:
      return [];
  }
}
