import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import type { ReadyDays } from '@/shared/timeline/ready-days';

const SAYS = [
  ['cured', 'everything is cured only on'],
  ['dry', 'the wood is likely dry only on'],
  ['work', 'the last work on it is on'],
] as const;

/**
 * Why a job cannot be ready on the day it is promised for, the longest wait first: `The due day is 3 days too early:
 * everything is cured only on 19 Dec.` Empty where it can.
 */
export function sayDueTooEarly(
  dueOn: CalendarDate,
  ready: ReadyDays,
  { today, order }: { today: CalendarDate; order: DateOrder },
): string[] {
  return SAYS.flatMap(([what, words]) => {
    const day = ready[what];
    return day !== undefined && dueOn < day ? [{ day, words }] : [];
  })
    .sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0))
    .map(({ day, words }) => {
      const days = daysBetween(dueOn, day);
      return `The due day is ${days} ${days === 1 ? 'day' : 'days'} too early: ${words} ${sayDate(day, { order, today })}.`;
    });
}
