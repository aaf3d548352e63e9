import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dayThatCounts } from '@/shared/timeline/last-use';
import type { Step, StepKind } from '@/shared/timeline/step';

/**
 * The day that counts for what goes into each step of some jobs, by the step's number, as the time line has it: the last
 * lift of its pour that is not poured yet, the last coat of its finish that is not done yet, else its own day.
 */
export async function daysThatCount(
  tx: Pick<WriteTransaction, 'step'>,
  jobIds: readonly number[],
): Promise<ReadonlyMap<number, CalendarDate>> {
  const rows = await tx.step.findMany({
    where: { jobId: { in: [...jobIds] }, ...STANDS },
    select: {
      id: true,
      jobId: true,
      kind: true,
      name: true,
      day: true,
      sort: true,
      partId: true,
      pourId: true,
      productId: true,
      coatNr: true,
      doneOn: true,
      doneBy: { select: { reversedBy: { select: { id: true } } } },
    },
  });
  const byJob = new Map<number, Step[]>();
  for (const { jobId, doneBy, ...row } of rows) {
    const step: Step = {
      ...row,
      kind: row.kind as StepKind,
      day: row.day as CalendarDate,
      doneOn: (doneBy && !doneBy.reversedBy ? row.doneOn : null) as CalendarDate | null,
    };
    byJob.set(jobId, [...(byJob.get(jobId) ?? []), step]);
  }
  return new Map(
    [...byJob.values()].flatMap((steps) => steps.map((step) => [step.id, dayThatCounts(step, steps)] as const)),
  );
}
