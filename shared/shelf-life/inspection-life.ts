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
