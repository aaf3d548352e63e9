import { STANDS } from '@/app/_server/timeline/standing';
import { stepOfRow, stepSelect } from '@/app/_server/timeline/step-row';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dayThatCounts } from '@/shared/timeline/last-use';
import type { Step } from '@/shared/timeline/step';

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
    select: { ...stepSelect, jobId: true },
  });
  const byJob = new Map<number, Step[]>();
  for (const row of rows) byJob.set(row.jobId, [...(byJob.get(row.jobId) ?? []), stepOfRow(row)]);
  return new Map(
    [...byJob.values()].flatMap((steps) => steps.map((step) => [step.id, dayThatCounts(step, steps)] as const)),
  );
}
