import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { inOrder, type Step, type StepKind } from '@/shared/timeline/step';

/** A step with what only a page needs. */
export type StepLine = Step & { readonly note: string; readonly ofPour: boolean };

/** The steps of a job that stand, in the order of their days. What was done by an entry that was reversed is not done. */
export async function readSteps(tx: Pick<WriteTransaction, 'step'>, jobId: number): Promise<StepLine[]> {
  const rows = await tx.step.findMany({
    where: { jobId, ...STANDS },
    select: {
      id: true,
      kind: true,
      name: true,
      day: true,
      sort: true,
      partId: true,
      pourId: true,
      productId: true,
      coatNr: true,
      note: true,
      doneOn: true,
      doneBy: { select: { reversedBy: { select: { id: true } } } },
      lift: { select: { id: true } },
    },
  });
  const steps = rows.map(({ doneBy, lift, ...row }) => ({
    ...row,
    kind: row.kind as StepKind,
    day: row.day as CalendarDate,
    doneOn: (doneBy && !doneBy.reversedBy ? row.doneOn : null) as CalendarDate | null,
    ofPour: lift !== null,
  }));
  return inOrder(steps) as StepLine[];
}
