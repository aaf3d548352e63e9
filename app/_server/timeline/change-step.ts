import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { stepOf } from '@/app/_server/timeline/step-of';
import { err, ok } from '@/shared/result/result';

export type ChangeStep = { stepId: number; name: string; note: string };

/** Names a step anew, or writes another note beside it. */
export const changeStep: Command<ChangeStep, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'step-changed', request: input }, async (pen) => {
    const found = await stepOf(pen.tx, input.stepId);
    if (!found.ok) return found;
    const { step, jobId } = found.value;
    const [name, note] = [input.name.trim(), input.note.trim()];
    if (name === '') return err({ code: 'step-needs-name', field: 'name' });
    if (name === step.name && note === step.note) return err({ code: 'changes-nothing' });
    const answer = { name };
    await pen.enter({ jobId, why: name === step.name ? `${name}: ${note}` : `${step.name} → ${name}` }, answer);
    await pen.tx.step.update({ where: { id: step.id }, data: { name, note }, select: { id: true } });
    return ok(answer);
  });
