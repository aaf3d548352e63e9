import { STANDS } from '@/app/_server/timeline/standing';
import { stepOfRow, stepSelect } from '@/app/_server/timeline/step-row';
import type { WriteTransaction } from '@/prisma/open-book';
import { inOrder, type Step } from '@/shared/timeline/step';

/** A step with what only a page needs. */
export type StepLine = Step & { readonly note: string; readonly ofPour: boolean };

/** The steps of a job that stand, in the order of their days. What was done by an entry that was reversed is not done. */
export async function readSteps(tx: Pick<WriteTransaction, 'step'>, jobId: number): Promise<StepLine[]> {
  const rows = await tx.step.findMany({
    where: { jobId, ...STANDS },
    select: { ...stepSelect, note: true, lift: { select: { id: true } } },
  });
  const steps = rows.map((row) => ({ ...stepOfRow(row), note: row.note, ofPour: row.lift !== null }));
  return inOrder(steps) as StepLine[];
}
