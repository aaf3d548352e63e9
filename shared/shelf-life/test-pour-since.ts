import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** A test pour older than this says little of the material as it is now. Common practice. */
export const MOST_POUR_DAYS = 90;

/** Why an earlier pour says nothing: it is the material past the limit, since it was opened, or since it failed. */
export type PourSince = {
  readonly day: CalendarDate;
  readonly because: 'past-limit' | 'opened' | 'failed' | 'age';
};

/**
 * The first day on which a test pour may have been made for an override to rest on it; of several bounds the latest.
 *
 * - A limit that has run out before today: the day after its last good day. A pour made while it was good says nothing of
 *   the material past it. For a limit still ahead no such pour can exist yet, so the age bound alone holds.
 * - An opened life that is past on the judged day: the day it was opened, for a container that opens ages otherwise.
 * - A failed inspection that stands: its day.
 * - In every case, and alone where no date is known: at most 90 days before today (common practice).
 *
 * Best before 12 Nov, asked on 25 Nov: 13 Nov, `past-limit`.
 */
export function testPourSince(
  { reasons }: Pick<Verdict, 'reasons'>,
  { openedOn, today }: { readonly openedOn?: CalendarDate; readonly today: CalendarDate },
): PourSince {
  const bounds = reasons.flatMap((reason): PourSince[] => {
    if (reason.code === 'inspection-failed') return [{ day: reason.on, because: 'failed' }];
    if (reason.code !== 'past-limit') return [];
    const { basis, lastGoodDay } = reason.limit;
    return [
      ...(lastGoodDay < today ? [{ day: addDays(lastGoodDay, 1), because: 'past-limit' as const }] : []),
      ...(basis === 'opened-life' && openedOn ? [{ day: openedOn, because: 'opened' as const }] : []),
    ];
  });
  const age: PourSince = { day: addDays(today, -MOST_POUR_DAYS), because: 'age' };
  return bounds.reduce((latest, one) => (one.day > latest.day ? one : latest), age);
}
