import { samplesToLookAt } from '@/app/_server/watch/samples-to-look-at';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';

/** Kept samples whose day to be looked at has come. */
export async function sampleNotes(book: OpenBook, { today, dateOrder: order }: NoteContext): Promise<WatchNote[]> {
  const samples = await samplesToLookAt(book, today);
  return samples.map(({ id, name, lookOn, madeOn, place, pour, job }) => {
    const days = daysBetween(lookOn, today);
    return {
      id: `sample-${id}-${lookOn}`,
      href: '/samples',
      name,
      label: [pour, job?.name].filter(Boolean).join(', ') || `Made ${sayDate(madeOn, { order, today })}`,
      place,
      word: 'care',
      says: days === 0 ? 'look today' : `${days} ${days === 1 ? 'day' : 'days'} late`,
      why: `Kept since ${sayDate(madeOn, { order, today })}, ${sayDays(-daysBetween(madeOn, today))}; to be looked at on ${sayDate(lookOn, { order, today })}.`,
      toDo: 'Press it, hold it to the light, and write what you see.',
    };
  });
}
