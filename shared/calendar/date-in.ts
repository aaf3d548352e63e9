import { type CalendarDate, calendarDateOf } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

const formats = new Map<string, Intl.DateTimeFormat>();

function formatFor(timeZone: string): Intl.DateTimeFormat {
  const kept = formats.get(timeZone);
  if (kept) return kept;
  const made = new Intl.DateTimeFormat('en-US-u-ca-gregory-nu-latn', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
  });
  formats.set(timeZone, made);
  return made;
}

/** Whether the text is a time zone this machine knows, such as `America/New_York`; for the settings form. */
export function isTimeZone(text: string): boolean {
  try {
    formatFor(text);
    return true;
  } catch {
    return false;
  }
}

/**
 * What day it is in the time zone at the instant: the workshop's own "today". The instant is an argument because nothing
 * in `shared` reads the clock. Throws on a zone that `isTimeZone` refuses.
 * `dateIn('Pacific/Kiritimati', new Date('2026-12-11T11:00:00Z'))` is `2026-12-12`.
 */
export function dateIn(timeZone: string, instant: Date): CalendarDate {
  const parts = formatFor(timeZone).formatToParts(instant);
  const numberOf = (type: 'year' | 'month' | 'day') => Number(parts.find((part) => part.type === type)?.value);
  return unwrap(calendarDateOf(numberOf('year'), numberOf('month'), numberOf('day')));
}
