import { redirect } from 'next/navigation';
import { connection } from 'next/server';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { troubleOfBook } from '@/app/_server/book/trouble-of-book';

/** The first page: the book's, or the welcome where no book was begun. The pages behind it say what is wrong with a book. */
export default async function FirstPage() {
  await connection();
  if (!(await troubleOfBook())) await bookForPage();
  redirect('/arrive');
}
