import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { laterOf } from '@/shared/calendar/later-of';
import { coverDemands } from '@/shared/promise/cover-demands';
import type { Demand, Supply } from '@/shared/promise/supply-and-demand';

/** Why the curve is another from a day on. */
export type StepReason =
  | { readonly code: 'today' }
  | {
      readonly code: 'ends';
      readonly id: string;
      readonly words: string;
      readonly lastGoodDay: CalendarDate;
      readonly amount: number;
    }
  | { readonly code: 'comes'; readonly id: string; readonly words: string; readonly amount: number };

/** From a day on, until the next step: amounts in small units; `good` is `promised` and `kept` and `free` together. */
export type PromiseStep = {
  readonly from: CalendarDate;
  /** All that is here and good. */
  readonly good: number;
  /** Of that, promised to jobs. */
  readonly promised: number;
  /** Of that, left to what jobs need and nobody promised yet. */
  readonly kept: number;
  /** What may be promised for a day of this step without leaving any of those needs, before it or after it, shorter. */
  readonly free: number;
  readonly reasons: readonly StepReason[];
};

/**
 * How much of a material can be promised for each day from today on, as steps. For a day it counts what is here by then and
 * still good on it, less what is promised, less what must be left so that no need that could be met is met less: needs
 * of later days too, but only as far as nothing that comes later, or ends earlier, can meet them. Needs of days that have
 * passed count as today's. Nothing here is ever below zero; what is short shows as a need that is not met, not as a
 * curve below zero.
 *
 * With nothing that ends, and every need met, this is the available-to-promise of production planning with look-ahead:
 * the least, from the day on, of all that came by then less all that was promised by then (APICS Dictionary, "available-to-
 * promise" and "look-ahead ATP"; from memory).
 *
 * Example: 10 on hand, 8 needed on 20 Dec, 5 come on 15 Dec → 7 today, since the 5 serve the need with 3 of what is here;
 * and 7 from 15 Dec on, 15 less 8.
 */
export function availableToPromise(
  supplies: readonly Supply[],
  demands: readonly Demand[],
  today: CalendarDate,
): PromiseStep[] {
  const { there, wanted } = fromToday(supplies, demands, today);
  const met = coverDemands(there, wanted).total;
  return daysOfChange(there, today).map((from) => {
    const here = there.filter((supply) => supply.from <= from && (supply.lastGoodDay ?? from) >= from);
    const good = here.reduce((sum, supply) => sum + supply.amount, 0);
    const promised = here.reduce((sum, supply) => sum + supply.promised, 0);
    const free = coverDemands(there, [...wanted, oneMore({ on: from })]).total - met;
    return { from, good, promised, kept: good - promised - free, free, reasons: reasonsOf(there, from, today) };
  });
}

/**
 * What may be promised for a day, and is good to another on or after it: what the curve says of `on` alone where both are
 * one day. A day that has passed counts as today.
 *
 * Example: 5 on hand to 10 Dec and 3 to 20 Dec; for 8 Dec 8, for 8 Dec and good to 15 Dec 3.
 */
export function freeToPromise(
  supplies: readonly Supply[],
  demands: readonly Demand[],
  { on, goodTo }: Pick<Demand, 'on' | 'goodTo'>,
  today: CalendarDate,
): number {
  const { there, wanted } = fromToday(supplies, demands, today);
  const [more] = fromToday([], [oneMore({ on, goodTo })], today).wanted;
  return coverDemands(there, more ? [...wanted, more] : wanted).total - coverDemands(there, wanted).total;
}

const oneMore = (day: Pick<Demand, 'on' | 'goodTo'>): Demand => ({
  ...day,
  id: ' one more',
  words: '',
  amount: Number.POSITIVE_INFINITY,
});

/** What is still good and what is still wanted; days that have passed as today. */
function fromToday(supplies: readonly Supply[], demands: readonly Demand[], today: CalendarDate) {
  const atLeast = (day: CalendarDate) => laterOf(day, today);
  return {
    there: supplies.filter((supply) => supply.amount > 0 && (supply.lastGoodDay ?? today) >= today),
    wanted: demands
      .filter((demand) => demand.amount > 0)
      .map(({ on, goodTo = on, ...demand }): Demand => ({ ...demand, on: atLeast(on), goodTo: atLeast(goodTo) })),
  };
}

/** Today, the days something comes, and the days after something ends. */
function daysOfChange(supplies: readonly Supply[], today: CalendarDate): CalendarDate[] {
  const days = new Set<CalendarDate>([today]);
  for (const { from, lastGoodDay } of supplies) {
    if (from > today) days.add(from);
    if (lastGoodDay) days.add(addDays(lastGoodDay, 1));
  }
  return [...days].sort();
}

function reasonsOf(supplies: readonly Supply[], day: CalendarDate, today: CalendarDate): StepReason[] {
  const reasons: StepReason[] = day === today ? [{ code: 'today' }] : [];
  for (const { id, words, amount, from, lastGoodDay } of supplies) {
    if (from === day && day > today) reasons.push({ code: 'comes', id, words, amount });
    if (lastGoodDay && addDays(lastGoodDay, 1) === day && from < day)
      reasons.push({ code: 'ends', id, words, lastGoodDay, amount });
  }
  return reasons;
}
