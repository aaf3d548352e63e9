import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { openJob } from '@/app/_server/timeline/open-job';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { err, ok } from '@/shared/result/result';
import type { Move } from '@/shared/timeline/shift-steps';

export type MoveSteps = { jobId: number; moves: Move[] };
/** What undoing it goes by. */
export type MovedSteps = { moves: (Move & { name: string })[] };

/**
 * Moves steps to other days, all of them or none: refused where somebody moved, finished or took off one of them since it
 * was read, so that nobody's plan is written over unseen.
 */
export const moveSteps: Command<MoveSteps, MovedSteps> = (book, by, input) =>
  writeEntry<MovedSteps>(book, { ...by, kind: 'steps-moved', request: input }, async (pen) => {
    const job = await openJob(pen.tx, input.jobId);
    if (!job.ok) return job;
    const steps = new Map((await readSteps(pen.tx, input.jobId)).map((step) => [step.id, step]));
    const moves: MovedSteps['moves'] = [];
    for (const { stepId, from, to } of input.moves) {
      const step = steps.get(stepId);
      if (!step) return err({ code: 'step-gone' });
      if (step.doneOn !== null) return err({ code: 'step-done-already', facts: { step: step.name, on: step.doneOn } });
      if (step.day !== from) return err({ code: 'step-moved-meanwhile', facts: { step: step.name, to: step.day } });
      if (from !== to) moves.push({ stepId, from, to, name: step.name });
    }
    if (moves.length === 0) return err({ code: 'changes-nothing' });
    const answer = { moves };
    await pen.enter(
      { jobId: input.jobId, why: moves.map(({ name, from, to }) => `${name}: ${from} → ${to}`).join('; ') },
      answer,
    );
    for (const { stepId, to } of moves) {
      await pen.tx.step.update({ where: { id: stepId }, data: { day: to }, select: { id: true } });
    }
    await keepDayOfUse(pen.tx, input.jobId);
    return ok(answer);
  });
