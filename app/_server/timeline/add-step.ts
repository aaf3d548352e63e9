import type { Command } from '@/app/_server/act';
import { partOfJob } from '@/app/_server/jobs/part-of-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { openJob } from '@/app/_server/timeline/open-job';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';
import { STEP_WORDS } from '@/shared/timeline/say-step';
import type { StepKind } from '@/shared/timeline/step';

export type AddStep = {
  jobId: number;
  kind: StepKind;
  name: string;
  day: CalendarDate;
  note: string;
  /** Left out, or null: the whole job. */
  partId?: number | null;
};

/** Adds a step to a job's time line. Without a name it is called after its kind. */
export const addStep: Command<AddStep, { entryId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'step-added', request: input }, async (pen) => {
    const job = await openJob(pen.tx, input.jobId);
    if (!job.ok) return job;
    const { jobId, kind, day } = input;
    const part = await partOfJob(pen.tx, jobId, input.partId ?? null);
    if (!part.ok) return part;
    const name = input.name.trim() || STEP_WORDS[kind];
    if (kind === 'other' && input.name.trim() === '') return err({ code: 'step-needs-name', field: 'name' });
    const last = await pen.tx.step.aggregate({ where: { jobId, day }, _max: { sort: true } });
    const answer = { entryId: pen.entryId, name };
    await pen.enter({ jobId, why: `${name}${part.value ? `, ${part.value.name}` : ''}, ${day}` }, answer);
    await pen.tx.step.create({
      data: {
        jobId,
        entryId: pen.entryId,
        partId: part.value?.id ?? null,
        kind,
        name,
        day,
        sort: (last._max.sort ?? -1) + 1,
        note: input.note.trim(),
      },
      select: { id: true },
    });
    await keepDayOfUse(pen.tx, jobId);
    return ok(answer);
  });
