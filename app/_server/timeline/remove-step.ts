import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { STANDS } from '@/app/_server/timeline/standing';
import { stepOf } from '@/app/_server/timeline/step-of';
import { err, ok } from '@/shared/result/result';

/**
 * Takes a step off a time line, and what was needed for it alone. A lift belongs to the plan of its pour and is taken off
 * there; what is done stays.
 */
export const removeStep: Command<{ stepId: number }, { name: string; needs: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'step-removed', request: input }, async (pen) => {
    const found = await stepOf(pen.tx, input.stepId);
    if (!found.ok) return found;
    const { step, jobId } = found.value;
    if (step.ofPour) return err({ code: 'step-of-a-pour', facts: { step: step.name } });
    if (step.doneOn !== null) return err({ code: 'step-done-already', facts: { step: step.name, on: step.doneOn } });
    const needs = await pen.tx.need.findMany({ where: { stepId: step.id, ...STANDS }, select: { id: true } });
    const answer = { name: step.name, needs: needs.length };
    await pen.enter({ jobId, why: `${step.name}, ${step.day}` }, answer);
    const removed = { removedById: pen.entryId };
    await pen.tx.step.update({ where: { id: step.id }, data: removed, select: { id: true } });
    await pen.tx.need.updateMany({ where: { id: { in: needs.map(({ id }) => id) } }, data: removed });
    await keepDayOfUse(pen.tx, jobId);
    return ok(answer);
  });
