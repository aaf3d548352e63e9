import type { OpenBook } from '@/prisma/open-book';

/** The cured samples kept of these lifts, gone or not, the oldest first. */
export async function samplesOfLifts(
  book: Pick<OpenBook, 'read'>,
  liftIds: readonly number[],
): Promise<{ id: number; name: string; liftId: number | null }[]> {
  return book.read.sample.findMany({
    where: { liftId: { in: [...liftIds] }, entry: { reversedBy: null } },
    orderBy: { id: 'asc' },
    select: { id: true, name: true, liftId: true },
  });
}
