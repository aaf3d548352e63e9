import { undoneStep } from '@/app/_server/watch/standing-steps';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { StepKind } from '@/shared/timeline/step';

/** A step of an open job's time line that is still to be done. */
export type UndoneStep = {
  id: number;
  entryId: number;
  jobId: number;
  job: string;
  kind: StepKind;
  name: string;
  day: CalendarDate;
  note: string;
  pour: string | null;
  product: string | null;
  coatNr: number | null;
  /** Of a demould or a cure: a lift of its pour is still to be poured. */
  liftsLeft: boolean;
};

const MOST = 2000;

/** The steps of all open jobs that are still to be done, by their day; up to a day where one is given. */
export async function undoneSteps(book: OpenBook, until?: CalendarDate): Promise<UndoneStep[]> {
  const rows = await book.read.step.findMany({
    where: until ? { ...undoneStep, day: { lte: until } } : undoneStep,
    orderBy: [{ day: 'asc' }, { sort: 'asc' }, { id: 'asc' }],
    take: MOST,
    select: {
      id: true,
      entryId: true,
      jobId: true,
      kind: true,
      name: true,
      day: true,
      note: true,
      pourId: true,
      coatNr: true,
      job: { select: { name: true } },
      pour: { select: { name: true } },
      product: { select: { name: true } },
    },
  });
  const jobs = [...new Set(rows.map((row) => row.jobId))];
  const lifts = await book.read.step.findMany({
    where: { ...undoneStep, kind: { in: ['seal', 'lift'] }, jobId: { in: jobs } },
    select: { jobId: true, pourId: true },
  });
  // Steps that were put down by hand belong to no pour: of those any lift of the job counts.
  const pourOf = (step: { jobId: number; pourId: number | null }) => `${step.jobId}/${step.pourId}`;
  const waiting = new Set(lifts.map(pourOf));
  return rows.map(({ pourId, job, pour, product, day, ...row }) => ({
    ...row,
    kind: row.kind as StepKind,
    day: day as CalendarDate,
    job: job.name,
    pour: pour?.name ?? null,
    product: product?.name ?? null,
    liftsLeft: waiting.has(pourOf({ jobId: row.jobId, pourId })),
  }));
}
