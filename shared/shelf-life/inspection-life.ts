import { addMonths } from '@/shared/calendar/add-months';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Life } from '@/shared/calendar/life';

/**
 * How long a passed inspection is taken to hold when nobody says otherwise: half of the original life, part months (or, for
 * a life in days or weeks, part days) rounded up. FED-STD-793 §3.3; USAF TO 1-1-700 §12.8 says the same of sealants.
 * `inspectionLife({ count: 9, unit: 'month' })` is 5 months. A suggestion for the form: a person may enter another day.
 */
export function inspectionLife({ count, unit }: Life): Life {
  if (unit === 'day' || unit === 'week') {
    return { count: Math.ceil((unit === 'week' ? count * 7 : count) / 2), unit: 'day' };
  }
  return { count: Math.ceil((unit === 'year' ? count * 12 : count) / 2), unit: 'month' };
}

/**
 * The day a further passed inspection of the same lot should reach at most, by the depot rule: half of the original life,
 * then a third, then what is left, and never past the day made plus twice the life. Undefined once that is used up.
 * `lifeMonths` from 1; `extensions` already granted, from 0; part months round up. FED-STD-793 §3.3 and §3.4.
 * Made 1 May 2005 with 24 months: 1 May 2008, then 1 Jan 2009, then 1 May 2009, then none.
 */
export function nextExtension(madeOn: CalendarDate, lifeMonths: number, extensions: number): CalendarDate | undefined {
  if (!Number.isInteger(lifeMonths) || lifeMonths < 1)
    throw new RangeError(`A life must be whole months, got ${lifeMonths}`);
  if (!Number.isInteger(extensions) || extensions < 0)
    throw new RangeError(`Extensions must be a count, got ${extensions}`);
  if (extensions > 2) return undefined;
  const half = Math.ceil(lifeMonths / 2);
  const third = Math.ceil(lifeMonths / 3);
  const reached = [half, half + third, lifeMonths].map((months) => Math.min(months, lifeMonths));
  const months = reached[extensions] ?? lifeMonths;
  const before = extensions === 0 ? 0 : (reached[extensions - 1] ?? lifeMonths);
  return months > before ? addMonths(madeOn, lifeMonths + months) : undefined;
}
