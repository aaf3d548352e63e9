const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

const FULL = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `shortMonth(12)` is `Dec`; month 1 to 12, throws outside. */
export function shortMonth(month: number): string {
  const name = MONTHS[month - 1];
  if (!name) throw new RangeError(`No month ${month}`);
  return name;
}

/** `longMonth(12)` is `December`; month 1 to 12, throws outside. */
export function longMonth(month: number): string {
  const name = FULL[month - 1];
  if (!name) throw new RangeError(`No month ${month}`);
  return name;
}

/**
 * The month a word names, 1 to 12, or undefined. English names in any case, whole or cut to three letters or more, so
 * that `sept`, `SEP` and `September` are all 9.
 */
export function monthNamed(word: string): number | undefined {
  const lower = word.toLowerCase();
  if (lower.length < 3) return undefined;
  const index = FULL.findIndex((name) => name.toLowerCase().startsWith(lower));
  return index < 0 ? undefined : index + 1;
}
