import type { OpenBook } from '@/prisma/open-book';

/** How many containers something of is promised to a job. */
export function promisedCount(book: OpenBook, jobId: number): Promise<number> {
  return book.read.promised.count({ where: { jobId, amount: { gt: 0 } } });
}
