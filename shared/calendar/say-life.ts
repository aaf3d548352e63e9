import type { Life } from '@/shared/calendar/life';

/** A life as people say it: `sayLife({ count: 18, unit: 'month' })` is `18 months`, one of a unit is `1 year`. */
export function sayLife({ count, unit }: Life): string {
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
