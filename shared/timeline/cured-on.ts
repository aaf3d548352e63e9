import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { groups } from '@/shared/timeline/links-of';
import { dayOfStep, type Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/**
 * The day on which the last lift of every pour is fully cured and the last coat of every finish bears use; undefined where
 * nothing is poured or coated, or no sheet says how long it takes. A step that is done counts from the day it was done.
 * Last coat on 12 Dec with 7 days: 19 Dec.
 */
export function curedOn(
  steps: readonly Step[],
  facts: Pick<TimelineFacts, 'pours' | 'finishes'>,
): CalendarDate | undefined {
  const ends: CalendarDate[] = [];
  const add = (of: readonly Step[], days: number | undefined) => {
    const last = of.map(dayOfStep).sort().at(-1);
    if (last !== undefined && days !== undefined) ends.push(addDays(last, Math.ceil(days)));
  };
  for (const [pourId, lifts] of groups(
    steps.filter(({ kind }) => kind === 'lift'),
    'pourId',
  )) {
    add(lifts, facts.pours[pourId ?? 0]?.fullCureDays);
  }
  for (const [productId, coats] of groups(
    steps.filter(({ kind }) => kind === 'coat'),
    'productId',
  )) {
    add(coats, facts.finishes[productId ?? 0]?.cureDays);
  }
  return ends.sort().at(-1);
}
