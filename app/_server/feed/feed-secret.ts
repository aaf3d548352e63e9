import { createHash, timingSafeEqual } from 'node:crypto';
import type { OpenBook } from '@/prisma/open-book';

/** The secret part of the calendar's address, or null where there is none. */
export async function feedSecret(book: OpenBook): Promise<string | null> {
  const row = await book.read.book.findUnique({ where: { id: 1 }, select: { feedSecret: true } });
  return row?.feedSecret ?? null;
}

/**
 * Whether what was asked is the book's secret. Digests are compared, in constant time, so that neither its length nor how
 * much of it was guessed shows in how long the answer takes; a book without one is compared too, and never fits.
 */
export async function isFeedSecret(book: OpenBook, asked: string): Promise<boolean> {
  const kept = await feedSecret(book);
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(asked), digest(kept ?? '')) && kept !== null;
}
