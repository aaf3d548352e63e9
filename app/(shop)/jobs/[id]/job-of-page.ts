import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { jobPage } from '@/app/_server/jobs/read-jobs';

/** The job a page is about, with the book's head; the page that says there is none where the number is no job's. */
export async function jobOfPage(params: Promise<{ id: string }>) {
  const { book, head } = await bookForPage();
  const { id } = await params;
  const found = /^[1-9]\d{0,14}$/.test(id) ? await jobPage(book, Number(id)) : undefined;
  if (!found) notFound();
  return { ...found, head };
}
