import { refusePartGone } from '@/app/_server/jobs/refuse-part-gone';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import type { MovedSteps } from '@/app/_server/timeline/move-steps';
import { readSteps } from '@/app/_server/timeline/read-steps';

type Undone = { id: number; jobId: number | null; answer: string };

/** Steps that rest on the entry go with it, unless one of them was done since; the job's day of use follows. */
export async function undoPlannedSteps(pen: Pen, { id, jobId }: Undone): Promise<Refusal | undefined> {
  const done = await pen.tx.step.findFirst({
    where: { entryId: id, doneById: { not: null }, doneBy: { reversedBy: null } },
    select: { name: true, doneOn: true },
  });
  if (done) return { code: 'step-done-already', facts: { step: done.name, on: done.doneOn } };
  return followed(pen, jobId);
}

/** Every step goes back to the day it was on, unless it was moved on, finished or taken off since. */
export async function undoMovedSteps(pen: Pen, { jobId, answer }: Undone): Promise<Refusal | undefined> {
  const { moves } = JSON.parse(answer) as MovedSteps;
  const steps = new Map((await readSteps(pen.tx, jobId ?? 0)).map((step) => [step.id, step]));
  for (const { stepId, to } of moves) {
    const step = steps.get(stepId);
    if (!step) return { code: 'step-gone' };
    if (step.doneOn !== null) return { code: 'step-done-already', facts: { step: step.name, on: step.doneOn } };
    if (step.day !== to) return { code: 'step-moved-meanwhile', facts: { step: step.name, to: step.day } };
  }
  for (const { stepId, from } of moves) {
    await pen.tx.step.update({ where: { id: stepId }, data: { day: from }, select: { id: true } });
  }
  return followed(pen, jobId);
}

/** A step that was taken off stands again, unless the part it is of has gone since; the job's day of use follows. */
export async function undoRemovedStep(pen: Pen, { jobId }: Undone): Promise<Refusal | undefined> {
  return (await refusePartGone(pen.tx, jobId ?? 0)) ?? followed(pen, jobId);
}

/** What rests on the entry changes by itself; the job's day of use follows. */
export async function undoStepFact(pen: Pen, { jobId }: Undone): Promise<Refusal | undefined> {
  return followed(pen, jobId);
}

async function followed(pen: Pen, jobId: number | null): Promise<undefined> {
  if (jobId !== null) await keepDayOfUse(pen.tx, jobId);
}
