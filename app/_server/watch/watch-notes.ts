import { benchNotes } from '@/app/_server/watch/bench-notes';
import { idleNotes } from '@/app/_server/watch/idle-notes';
import { jobsDueEarly } from '@/app/_server/watch/jobs-due-early';
import { pairNotes } from '@/app/_server/watch/pair-notes';
import { plannedNotes } from '@/app/_server/watch/planned-notes';
import { ragNotes } from '@/app/_server/watch/rag-notes';
import { readingNotes } from '@/app/_server/watch/reading-notes';
import { sampleNotes } from '@/app/_server/watch/sample-notes';
import { NOTE_LISTS, type NoteContext, type NoteList, type WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';

const READS: Record<NoteList, (book: OpenBook, context: NoteContext) => Promise<WatchNote[]>> = {
  rags: ragNotes,
  bench: benchNotes,
  pairs: pairNotes,
  planned: plannedNotes,
  due: jobsDueEarly,
  samples: sampleNotes,
  readings: readingNotes,
  idle: idleNotes,
};

export type WatchNotes = Record<NoteList, WatchNote[]>;

/** Everything in Watch that is no list of containers, each part with its lines. */
export async function watchNotes(book: OpenBook, context: NoteContext): Promise<WatchNotes> {
  const read = await Promise.all(NOTE_LISTS.map(async (list) => [list, await READS[list](book, context)] as const));
  return Object.fromEntries(read) as WatchNotes;
}
