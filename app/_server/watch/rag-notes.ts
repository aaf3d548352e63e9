import { ragsOut } from '@/app/_server/watch/rags-out';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';

/** The finishes whose rags are to be laid out, a line each. */
export async function ragNotes(book: OpenBook, { today, timeZone }: NoteContext): Promise<WatchNote[]> {
  const out = await ragsOut(book.read, { today, timeZone });
  const newest = [...new Map([...out].reverse().map((each) => [each.productId, each])).values()];
  return newest.map(({ entryId, productId, product, kind, job, on }) => ({
    id: `rags-${entryId}`,
    href: `/products/${productId}`,
    name: product,
    label: job ?? 'No job',
    place: null,
    word: 'stop',
    says: 'rags to lay out',
    why: `Taken ${on === today ? 'today' : 'yesterday'}.${kind === 'varnish' ? ' A varnish most often holds an oil that dries; its sheet says.' : ''}`,
  }));
}
