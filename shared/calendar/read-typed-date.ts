import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate, CalendarDateError } from '@/shared/calendar/calendar-date';
import { type DateAim, type DateOrder, type DateReading, dateReadings } from '@/shared/calendar/date-readings';
import { dateTokens } from '@/shared/calendar/date-tokens';
import { err, ok, type Result } from '@/shared/result/result';

/**
 * What was read. `ambiguous` is there when the text can mean more than one date and nothing says which: every reading, the
 * taken one first. Where the aim says which, it is taken, and `instead` has what else it can mean.
 */
export type TypedDate = DateReading & {
  readonly ambiguous?: readonly [DateReading, DateReading, ...DateReading[]];
  readonly instead?: readonly [DateReading, ...DateReading[]];
};

export type TypedDateError = CalendarDateError | { readonly code: 'empty' } | { readonly code: 'year-missing' };

const GRAVITY: Record<TypedDateError['code'], number> = {
  'no-such-day': 0,
  'no-such-month': 1,
  'year-out-of-range': 2,
  'year-missing': 3,
  'not-a-date': 4,
  empty: 5,
};

/** Days that are said by a word, counted from today. */
const NEAR_DAYS = new Map([
  ['yesterday', -1],
  ['today', 0],
  ['tomorrow', 1],
]);

/**
 * Reads a date as makers type it or as a tin shows it: `2026-12-12`, `20261212`, `261212`, `12 Dec 2026`, `Dec 12, 2026`,
 * `12/05/2026`, `12 Dec`, and by month or year only `2027-01`, `01/2027`, `01/27`, `Jan 2027`, `2027`. A month or a year
 * alone is its last day, with its precision said. English month names.
 *
 * `12/05/2026` is read in the workshop's own `order`, but since it may be meant the other way round, both readings come
 * in `ambiguous` and the screen asks; a part over 12, or the same date both ways, leaves nothing to ask. The same holds
 * for `Jan 27` (a month, or a day without a year) and for digits run together. Two digits for a year mean the nearest
 * (`fullYear`).
 *
 * With an `aim` nothing is asked: `12/02/2026` is taken in the workshop's `order`, `12 Dec` and `12/1` without a year are
 * the next such day (`ahead`, whole days first) or the last one (`past`), today included, and `today`, `tomorrow` and
 * `yesterday` are understood. `instead` then has the other readings that lie on that side of today.
 *
 * Fails with `empty`, `not-a-date`, `year-missing`, or the part that cannot be: `no-such-day`, `no-such-month`,
 * `year-out-of-range`. `readTypedDate('01/2027', { today, order: 'day-first' })` is `2027-01-31`, precision `month`.
 */
export function readTypedDate(
  text: string,
  context: { readonly today: CalendarDate; readonly order: DateOrder; readonly aim?: DateAim },
): Result<TypedDate, TypedDateError> {
  if (text.trim() === '') return err({ code: 'empty' });
  const { today, aim } = context;
  const near = aim && NEAR_DAYS.get(text.trim().toLowerCase());
  if (near !== undefined) return ok({ date: addDays(today, near), precision: 'day' });
  const tokens = dateTokens(text);
  const attempts = tokens ? dateReadings(tokens, context) : [];
  const readings: DateReading[] = [];
  const errors: TypedDateError[] = [];
  for (const attempt of attempts) {
    if (!attempt.ok) errors.push(attempt.error);
    else if (!readings.some((one) => one.date === attempt.value.date && one.precision === attempt.value.precision)) {
      readings.push(attempt.value);
    }
  }
  // A day of use is a whole day: a month is taken for one only where no day can be meant.
  if (aim === 'ahead') readings.sort((a, b) => Number(b.precision === 'day') - Number(a.precision === 'day'));
  const [taken, second, ...rest] = readings;
  if (taken && aim) {
    const [other, ...more] = readings.slice(1).filter(({ date }) => (aim === 'past' ? date <= today : date >= today));
    return ok(other ? { ...taken, instead: [other, ...more] } : taken);
  }
  if (taken) return ok(second ? { ...taken, ambiguous: [taken, second, ...rest] } : taken);
  errors.sort((a, b) => GRAVITY[a.code] - GRAVITY[b.code]);
  const error = errors[0];
  if (!error) return err({ code: 'not-a-date', text });
  return err('text' in error ? { ...error, text } : error);
}
