import { refusePartGone } from '@/app/_server/jobs/refuse-part-gone';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { readSteps } from '@/app/_server/timeline/read-steps';
import type { StepPartSet } from '@/app/_server/timeline/set-step-part';
import { STANDS } from '@/app/_server/timeline/standing';

type Undone = { jobId: number | null; answer: string };

/**
 * Every step, need and pour goes back to the part it was of, unless one of the steps was taken off or given to another part
 * since, or the part it was of has gone.
 */
export async function undoStepPart(pen: Pen, { jobId, answer }: Undone): Promise<Refusal | undefined> {
  const { to, steps, needs, pour } = JSON.parse(answer) as StepPartSet;
  const standing = new Map((await readSteps(pen.tx, jobId ?? 0)).map((step) => [step.id, step]));
  for (const { id } of steps) {
    const step = standing.get(id);
    if (!step) return { code: 'step-gone' };
    if (step.partId !== to) return { code: 'step-part-changed', facts: { step: step.name } };
  }
  if (pour && !(await pen.tx.pour.findFirst({ where: { id: pour.id, ...STANDS }, select: { id: true } }))) {
    return { code: 'pour-gone' };
  }
  for (const { id, from: partId } of steps) {
    await pen.tx.step.update({ where: { id }, data: { partId }, select: { id: true } });
  }
  for (const { id, from: partId } of needs) {
    await pen.tx.need.update({ where: { id }, data: { partId }, select: { id: true } });
  }
  if (pour) await pen.tx.pour.update({ where: { id: pour.id }, data: { partId: pour.from }, select: { id: true } });
  return refusePartGone(pen.tx, jobId ?? 0);
}
