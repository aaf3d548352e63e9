/**
 * Which minute of its day an instant is in a time zone, 0 (midnight) to 1439, as its clocks show it. The instant is an
 * argument because nothing in `shared` reads the clock. Throws on a zone that `isTimeZone` refuses.
 * `minuteIn('America/New_York', new Date('2026-11-25T15:05:00Z'))` is `605`.
 */
export function minuteIn(timeZone: string, instant: Date): number {
  const parts = new Intl.DateTimeFormat('en-US-u-nu-latn', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(instant);
  const numberOf = (type: 'hour' | 'minute') => Number(parts.find((part) => part.type === type)?.value);
  return numberOf('hour') * 60 + numberOf('minute');
}
