import { readWatch } from '@/app/_server/watch/read-watch';
import { WATCH_LISTS } from '@/app/_server/watch/watch-list';
import type { NoteContext } from '@/app/_server/watch/watch-note';
import { NOTE_LISTS } from '@/app/_server/watch/watch-note';
import { watchNotes } from '@/app/_server/watch/watch-notes';
import type { OpenBook } from '@/prisma/open-book';

/** One line of Watch as a bell knows it: the same id as long as it is the same matter, and a few words. */
export type WatchLine = { id: string; words: string };

const SAYS = {
  'on-hold': 'on hold',
  spoilt: 'spoilt',
  retest: 'to test again',
  expired: 'past its day',
  expiring: 'to use first',
  forgotten: 'opened and forgotten',
  undated: 'without a date',
  unconfirmed: 'with a date to confirm',
} as const;

/** Every line of Watch, the most urgent first, for the bell. */
export async function watchLines(book: OpenBook, context: NoteContext): Promise<WatchLine[]> {
  const [watch, notes] = await Promise.all([readWatch(book, context), watchNotes(book, context)]);
  return [
    ...NOTE_LISTS.flatMap((list) => notes[list].map(({ id, name, says }) => ({ id, words: `${name}: ${says}` }))),
    ...WATCH_LISTS.flatMap((list) =>
      watch.lists[list].groups.map(({ line, count }) => ({
        id: `${list}-${line.stockId}`,
        words: `${line.product}${count > 1 ? `, ${count} containers` : ''}: ${SAYS[list]}`,
      })),
    ),
    ...watch.heldPieces.map(({ stockId, species, form }) => ({
      id: `held-${stockId}`,
      words: `${species} ${form}: on hold`,
    })),
  ];
}
