import { type HeldLot, sayHeldLot } from '@/app/(shop)/arrive/say-held-lot';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { AdviceContext } from '@/shared/shelf-life/advice-on-condition';
import { sayReason } from '@/shared/shelf-life/say-reason';
import type { Reason } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import { whatToDo } from '@/shared/shelf-life/what-to-do';

/** What is said at the door depends on the day, the kind of material, and the units and the order of dates of the book. */
export type DoorContext = AdviceContext & {
  readonly today: CalendarDate;
  readonly order: DateOrder;
  /** The lot of the book it belongs to. */
  readonly lot?: HeldLot;
};

const days = (count: number) => `${count} ${count === 1 ? 'day' : 'days'}`;

/** A verdict at the door in one or two lines: nothing is needed yet, so it speaks of today and not of a day of use. */
export function sayArrival(
  verdict: Verdict,
  { today, order, prefer, lot }: DoorContext,
): readonly [string] | readonly [string, string] {
  const worst = verdict.reasons[0];
  const { governing } = verdict;
  const good = governing && `Good to ${sayDate(governing.lastGoodDay, { order, today })}.`;
  if (!worst || worst.code === 'house-default') return [good ?? 'Keeps. No limit is stated.'];
  const held = isOfLot(worst) && lot ? sayHeldLot(lot) : undefined;
  if (held) return held;
  if (worst.code === 'past-limit') {
    return [
      `It was good to ${sayDate(worst.limit.lastGoodDay, { order, today })}.`,
      `It arrives ${days(worst.daysPast)} too late for a client’s piece.`,
    ];
  }
  if (worst.code === 'date-unknown') {
    return ['Its date is unknown.', 'Unknown is never good: it needs an inspection before it goes in a client job.'];
  }
  if (worst.code === 'limit-near' && good) {
    return [good, worst.daysLeft === 0 ? 'That is today.' : `That is only ${days(worst.daysLeft)} from now.`];
  }
  if (worst.code === 'date-unconfirmed' && good)
    return [good, 'That is how the label was read; look at it and confirm.'];
  const said = sayReason(worst, { today, order, prefer });
  return good ? [said, good] : [said];
}

/** The reasons beside the headline one, each with what to do. The dates' own reasons are in the headline already. */
export function arrivalReasons(verdict: Verdict, context: DoorContext) {
  return verdict.reasons.map((reason, nr) => ({
    id: `${nr}-${reason.code}`,
    word: reason.weight === 'note' ? ('use' as const) : reason.weight,
    sentence: sayAtTheDoor(reason, context),
    toDo: whatToDoAtTheDoor(reason, context),
  }));
}

const isOfLot = (reason: Reason) => 'scope' in reason && reason.scope === 'lot';

function whatToDoAtTheDoor(reason: Reason, context: DoorContext): string | undefined {
  if (reason.code === 'past-limit') return 'Send it back, or keep it in quarantine until a test pour.';
  // The headline says it with the lot and the reason.
  return isOfLot(reason) && context.lot ? undefined : whatToDo(reason, context);
}

function sayAtTheDoor(reason: Reason, { today, order, prefer }: DoorContext): string {
  return sayReason(reason, { today, order, prefer }).replace(/ the day of use\b/, ' today');
}
