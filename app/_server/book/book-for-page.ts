import { redirect } from 'next/navigation';
import { connection } from 'next/server';
import { type BookHead, readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import type { OpenBook } from '@/prisma/open-book';

/** The open book as a page hands it on; only `_server` knows what is in it. */
export type PageBook = OpenBook;

/** The open book and its title page, for a page to read from. Sends a visitor of an unbegun book to the welcome page. */
export async function bookForPage(): Promise<{ book: PageBook; head: BookHead }> {
  await connection();
  const book = await theBook();
  const head = await readBook(book, new Date());
  if (!head) redirect('/welcome');
  return { book, head };
}
