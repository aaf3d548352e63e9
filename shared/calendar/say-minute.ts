/** A minute of the day, 0 to 1439, as a clock of 24 hours shows it. `sayMinute(605)` is `10:05`. */
export function sayMinute(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
}
