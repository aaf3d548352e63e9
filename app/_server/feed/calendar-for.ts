import { createHash } from 'node:crypto';
import { readBook } from '@/app/_server/book/read-book';
import { isFeedSecret } from '@/app/_server/feed/feed-secret';
import { jobEvents } from '@/app/_server/feed/job-events';
import { limitEvents } from '@/app/_server/feed/limit-events';
import { pairEvents } from '@/app/_server/feed/pair-events';
import { readingEvents } from '@/app/_server/feed/reading-events';
import { sampleEvents } from '@/app/_server/feed/sample-events';
import { writeCalendar } from '@/app/_server/feed/write-calendar';
import type { OpenBook } from '@/prisma/open-book';

/** The book's days as a calendar, for whoever knows its secret; undefined for everybody else. */
export async function calendarFor(
  book: OpenBook,
  { secret, origin, now }: { secret: string; origin: string; now: Date },
): Promise<string | undefined> {
  const [fits, head] = await Promise.all([isFeedSecret(book, secret), readBook(book, now)]);
  if (!fits || !head) return undefined;
  const events = (
    await Promise.all([
      jobEvents(book),
      limitEvents(book, head.today),
      pairEvents(book, head.today),
      sampleEvents(book),
      readingEvents(book),
    ])
  )
    .flat()
    .sort((a, b) => a.day.localeCompare(b.day) || a.id.localeCompare(b.id));
  const [entries, bookId] = await Promise.all([
    book.read.entry.findMany({
      where: { id: { in: [...new Set(events.map(({ entryId }) => entryId))] } },
      select: { id: true, writtenAt: true },
    }),
    idOfBook(book),
  ]);
  const writtenAt = new Map(entries.map((entry) => [entry.id, entry.writtenAt]));
  return writeCalendar(events, { name: head.name, bookId, origin, writtenAt });
}

/** The same for the life of a book and another for every book: made of how and when it was begun. */
async function idOfBook(book: OpenBook): Promise<string> {
  const [first, head] = await Promise.all([
    book.read.entry.findFirst({ orderBy: { id: 'asc' }, select: { key: true } }),
    book.read.book.findUnique({ where: { id: 1 }, select: { createdAt: true } }),
  ]);
  const begun = `${first?.key} ${head?.createdAt.toISOString()}`;
  return createHash('sha256').update(begun).digest('hex').slice(0, 16);
}
