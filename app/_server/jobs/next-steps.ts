import { STANDS } from '@/app/_server/timeline/standing';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type NextStep = { name: string; day: CalendarDate };

/** The next step of each of these jobs that is not done, by the number of the job. */
export async function nextSteps(book: OpenBook, jobIds: readonly number[]): Promise<ReadonlyMap<number, NextStep>> {
  const rows = await book.read.step.findMany({
    where: {
      AND: [
        { jobId: { in: [...jobIds] }, ...STANDS },
        { OR: [{ doneById: null }, { doneBy: { reversedBy: { isNot: null } } }] },
      ],
    },
    orderBy: [{ day: 'asc' }, { sort: 'asc' }, { id: 'asc' }],
    select: { jobId: true, name: true, day: true },
  });
  const next = new Map<number, NextStep>();
  for (const { jobId, name, day } of rows) if (!next.has(jobId)) next.set(jobId, { name, day: day as CalendarDate });
  return next;
}
