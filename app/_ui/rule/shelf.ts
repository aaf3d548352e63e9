import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { compareDates } from '@/shared/calendar/compare-dates';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';

export interface ShelfLimit {
  /** The last day on which it may be used. */
  lastGoodDay: CalendarDate;
  /** Where the limit comes from: "opened 12 Jun + 6 months, printed on the jug". */
  label: string;
  /** The limit that ends first and therefore counts. */
  governing: boolean;
}

export interface UseDay {
  date: CalendarDate;
  /** What it is needed for: "lift 3". */
  label: string;
}

/** The limit that counts: the one marked as governing, or else the earliest. */
export function governingLimit(limits: readonly ShelfLimit[]): ShelfLimit | undefined {
  const earliest = [...limits].sort((a, b) => compareDates(a.lastGoodDay, b.lastGoodDay))[0];
  return limits.find(({ governing }) => governing) ?? earliest;
}

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

/** What the ribbon shows, in sentences, for those who do not see it. */
export function sayShelf(
  {
    limits,
    useDay,
    openedOn,
  }: { limits: readonly ShelfLimit[]; useDay?: UseDay | undefined; openedOn?: CalendarDate | undefined },
  { today, order }: { today: CalendarDate; order: DateOrder },
): string {
  const limit = governingLimit(limits);
  const say = (date: CalendarDate) => sayDate(date, { order, today });
  const parts = [`Today is ${say(today)}.`];
  if (openedOn) parts.push(`Opened ${say(openedOn)}.`);
  if (!limit) parts.push('No limit is known.');
  else if (limit.lastGoodDay < today)
    parts.push(`Good until ${say(limit.lastGoodDay)}, ${days(daysBetween(limit.lastGoodDay, today))} ago.`);
  else parts.push(`Good to ${say(limit.lastGoodDay)}, ${days(daysBetween(today, limit.lastGoodDay))} from now.`);
  if (useDay) {
    const past = limit ? daysBetween(limit.lastGoodDay, useDay.date) : 0;
    const against = !limit ? '' : past > 0 ? `, ${days(past)} past the limit` : ', within the limit';
    parts.push(`Needed for ${useDay.label} on ${say(useDay.date)}${against}.`);
  }
  return parts.join(' ');
}
