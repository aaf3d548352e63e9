import type { Command } from '@/app/_server/act';
import { partOfJob } from '@/app/_server/jobs/part-of-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { STANDS } from '@/app/_server/timeline/standing';
import { stepOf } from '@/app/_server/timeline/step-of';
import { err, ok } from '@/shared/result/result';

/** `partId`: null for the whole job. */
export type SetStepPart = { stepId: number; partId: number | null };

/** What belonged to which part before, and to which it does now: what undoing it goes by. */
export type StepPartSet = {
  name: string;
  part: string | null;
  to: number | null;
  steps: { id: number; from: number | null }[];
  needs: { id: number; from: number | null }[];
  pour: { id: number; from: number | null } | null;
};

/**
 * Says which part of the job a step belongs to, done or not, and what is needed for it with it. A step of a pour takes the
 * whole pour along: its lifts, its demoulding and its cure are of one part.
 */
export const setStepPart: Command<SetStepPart, StepPartSet> = (book, by, input) =>
  writeEntry<StepPartSet>(book, { ...by, kind: 'step-part-set', request: input }, async (pen) => {
    const found = await stepOf(pen.tx, input.stepId);
    if (!found.ok) return found;
    const { step, steps, jobId } = found.value;
    const part = await partOfJob(pen.tx, jobId, input.partId);
    if (!part.ok) return part;
    const to = part.value?.id ?? null;
    if (step.partId === to) return err({ code: 'changes-nothing' });
    const pour =
      step.pourId === null
        ? null
        : await pen.tx.pour.findFirst({
            where: { id: step.pourId, ...STANDS },
            select: { id: true, name: true, partId: true },
          });
    const together = pour ? steps.filter(({ pourId }) => pourId === pour.id) : [step];
    const stepIds = together.map(({ id }) => id);
    const needs = await pen.tx.need.findMany({
      where: { stepId: { in: stepIds }, ...STANDS },
      select: { id: true, partId: true },
    });
    const before = step.partId === null ? null : await pen.tx.jobPart.findUnique({ where: { id: step.partId } });
    const name = pour?.name ?? step.name;
    const answer: StepPartSet = {
      name,
      part: part.value?.name ?? null,
      to,
      steps: together.map(({ id, partId }) => ({ id, from: partId })),
      needs: needs.map(({ id, partId }) => ({ id, from: partId })),
      pour: pour && { id: pour.id, from: pour.partId },
    };
    const say = (one: { name: string } | null) => one?.name ?? 'whole job';
    await pen.enter({ jobId, why: `${name}: ${say(before)} → ${say(part.value)}` }, answer);
    const data = { partId: to };
    await pen.tx.step.updateMany({ where: { id: { in: stepIds } }, data });
    await pen.tx.need.updateMany({ where: { id: { in: needs.map(({ id }) => id) } }, data });
    if (pour) await pen.tx.pour.update({ where: { id: pour.id }, data, select: { id: true } });
    return ok(answer);
  });
