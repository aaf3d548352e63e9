import { type PairLot, pairsToRetest } from '@/app/_server/watch/pairs-to-retest';
import { RETEST_DAYS } from '@/app/_server/watch/watch-list';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import { compareDates } from '@/shared/calendar/compare-dates';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';

/** Pairs of lots whose test pour together ends soon, or has ended, with something left of both. */
export async function pairNotes(book: OpenBook, { today, dateOrder: order }: NoteContext): Promise<WatchNote[]> {
  const pairs = await pairsToRetest(book, today);
  return pairs
    .filter(({ until }) => until <= addDays(today, RETEST_DAYS))
    .sort((a, b) => compareDates(a.until, b.until))
    .map(({ lots: [a, b], until }) => {
      const left = daysBetween(today, until);
      return {
        id: `pair-${a.lotId}-${b.lotId}-${until}`,
        href: `/lots/${a.lotId}`,
        name: `${a.product} with ${b.product}`,
        label: `${sayLot(a)} with ${sayLot(b)}`,
        place: null,
        word: left < 0 ? 'stop' : 'care',
        says: left < 0 ? `lapsed ${sayDays(left)}` : left === 0 ? 'its last day' : `${sayDays(left)} left`,
        why: `Mixed together they rest on a test pour of the two that ${left < 0 ? 'held' : 'holds'} to ${sayDate(until, { order, today })}.`,
        toDo: 'Pour a small test of these two again before they go into a job, and write down what you see.',
      };
    });
}

const sayLot = ({ code }: PairLot) => (code ? `Lot ${code}` : 'Lot unmarked');
