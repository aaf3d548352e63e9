/** Within so many hours work that is begun in the morning can go on the same day. */
const WORKING_DAY_HOURS = 8;

/**
 * Whole days until something can go on that must wait so many hours: none for what is over within a working day of 8
 * hours, else rounded up to the day, because days are all a time line knows. Hours are above or at zero.
 * `daysToWait(6)` is 0, `daysToWait(24)` is 1, `daysToWait(30)` is 2.
 */
export function daysToWait(hours: number): number {
  return hours <= WORKING_DAY_HOURS ? 0 : Math.ceil(hours / 24);
}
