import { STANDS } from '@/app/_server/timeline/standing';
import { matterOfSteps } from '@/app/_server/watch/matter-of-step';
import { undoneStep } from '@/app/_server/watch/standing-steps';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { bearsOn } from '@/shared/timeline/bears-on';
import type { StepKind } from '@/shared/timeline/step';

/** A step of an open job's time line that is still to be done. */
export type UndoneStep = {
  id: number;
  /** Its name as long as it is the same matter, whatever its number: see `matterOfSteps`. */
  matter: string;
  entryId: number;
  jobId: number;
  job: string;
  kind: StepKind;
  name: string;
  day: CalendarDate;
  note: string;
  pour: string | null;
  /** The part it is of; null where it is the whole job's, or the job has no other part to tell it from. */
  part: string | null;
  product: string | null;
  productId: number | null;
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
      partId: true,
      pourId: true,
      coatNr: true,
      job: { select: { name: true, _count: { select: { parts: { where: STANDS } } } } },
      part: { select: { name: true } },
      pour: { select: { name: true } },
      productId: true,
      product: { select: { name: true } },
      lift: { select: { nr: true } },
    },
  });
  const matterOf = await matterOfSteps(book, rows);
  const jobs = [...new Set(rows.map((row) => row.jobId))];
  const lifts = await book.read.step.findMany({
    where: { ...undoneStep, kind: { in: ['seal', 'lift'] }, jobId: { in: jobs } },
    select: { jobId: true, partId: true, pourId: true },
  });
  // Steps that were put down by hand belong to no pour: of those any such lift of the job counts that bears on their part.
  const pourOf = (step: { jobId: number; pourId: number | null }) => `${step.jobId}/${step.pourId}`;
  const waiting = new Map<string, typeof lifts>();
  for (const lift of lifts) waiting.set(pourOf(lift), [...(waiting.get(pourOf(lift)) ?? []), lift]);
  return rows.map(({ partId, pourId, job, part, pour, product, day, lift, ...row }) => ({
    ...row,
    matter: matterOf({ id: row.id, jobId: row.jobId, kind: row.kind, pourId, lift }),
    kind: row.kind as StepKind,
    day: day as CalendarDate,
    job: job.name,
    pour: pour?.name ?? null,
    part: part && job._count.parts > 1 ? part.name : null,
    product: product?.name ?? null,
    liftsLeft: (waiting.get(pourOf({ jobId: row.jobId, pourId })) ?? []).some((lift) => bearsOn(lift, { partId })),
  }));
}
