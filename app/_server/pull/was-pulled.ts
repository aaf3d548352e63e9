import type { Pulled } from '@/app/_server/pull/pull-container';
import type { OpenBook } from '@/prisma/open-book';

/** What was written under a key, for a device that pressed and never heard: the pull, or null when nothing was. */
export async function wasPulled(book: OpenBook, key: string): Promise<Pulled | null> {
  const entry = await book.read.entry.findUnique({ where: { key }, select: { kind: true, answer: true } });
  return entry?.kind === 'pulled' ? (JSON.parse(entry.answer) as Pulled) : null;
}
