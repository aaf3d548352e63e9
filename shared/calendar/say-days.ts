/** Mean Gregorian month and year: 146,097 days in 400 years. */
const MONTH = 146_097 / 4800;
const YEAR = 146_097 / 400;

/**
 * A count of days as people say it, always rounded down so that it never promises more: `today`, `1 day`, `41 days`, from
 * 60 days `5 months`, from two years `2 years`. Days past are `3 days ago`. Throws when `days` is not whole.
 */
export function sayDays(days: number): string {
  if (!Number.isInteger(days)) throw new RangeError(`Days must be whole, got ${days}`);
  if (days === 0) return 'today';
  const length = sayLength(Math.abs(days));
  return days < 0 ? `${length} ago` : length;
}

function sayLength(days: number): string {
  if (days < 60) return count(days, 'day');
  if (days < 2 * YEAR) return count(Math.floor(days / MONTH), 'month');
  return count(Math.floor(days / YEAR), 'year');
}

function count(n: number, unit: string): string {
  return `${n} ${unit}${n === 1 ? '' : 's'}`;
}
