import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { stepOf } from '@/app/_server/timeline/step-of';
import { err, ok } from '@/shared/result/result';

/** Says a step is not done after all. A lift that was poured stays poured: its own entry is reversed instead. */
export const reopenStep: Command<{ stepId: number }, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'step-undone', request: input }, async (pen) => {
    const found = await stepOf(pen.tx, input.stepId);
    if (!found.ok) return found;
    const { step, jobId } = found.value;
    if (step.ofPour) return err({ code: 'lift-is-poured', facts: { step: step.name } });
    if (step.doneOn === null) return err({ code: 'changes-nothing' });
    const answer = { name: step.name };
    await pen.enter({ jobId, why: `${step.name}, ${step.doneOn}` }, answer);
    await pen.tx.step.update({
      where: { id: step.id },
      data: { doneOn: null, doneById: null },
      select: { id: true },
    });
    await keepDayOfUse(pen.tx, jobId);
    return ok(answer);
  });
