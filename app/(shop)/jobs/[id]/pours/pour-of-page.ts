import { notFound, redirect } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { pourInstead, readPour } from '@/app/_server/pours/read-pour';
import { readId } from '@/app/(shop)/_parts/read-id';

/** The pour a page is about; the way to the one that took its place, or the page that says there is none. */
export async function pourOfPage(params: Promise<{ id: string; pour: string }>, rest = '') {
  const { book, head } = await bookForPage();
  const { id, pour: text } = await params;
  const [jobId, pourId] = [readId(id), readId(text)];
  if (jobId === undefined || pourId === undefined) notFound();
  const pour = await readPour(book.read, pourId);
  if (!pour) {
    const instead = await pourInstead(book.read, pourId);
    if (instead !== undefined) redirect(`/jobs/${jobId}/pours/${instead}${rest}`);
    notFound();
  }
  if (pour.job.id !== jobId) notFound();
  return { book, head, pour };
}
