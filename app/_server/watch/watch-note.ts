import type { BookHead } from '@/app/_server/book/read-book';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';

/** The parts of Watch that are no list of containers, in the order of the page. */
export const NOTE_LISTS = ['rags', 'bench', 'pairs', 'planned', 'due', 'samples', 'readings', 'idle'] as const;
export type NoteList = (typeof NOTE_LISTS)[number];

/** One line that needs somebody: what it is about, why, and the one thing to do. */
export type WatchNote = {
  /** The same as long as it is the same matter: the bell rings once for it. */
  id: string;
  href: string;
  name: string;
  /** A label, a lot, a job, as it is read. */
  label: string;
  place: string | null;
  word: VerdictWord;
  /** The words of its pill: "2 days late". */
  says: string;
  why: string;
  toDo?: string;
};

/** What the words need to know of the book. */
export type NoteContext = Pick<BookHead, 'today' | 'timeZone' | 'dateOrder' | 'units' | 'currency'>;
