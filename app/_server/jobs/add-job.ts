import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

/** A job as a form gives it. The day of use is that of the last lift or the last coat. */
export type JobFields = {
  name: string;
  purpose: Purpose;
  client: string;
  dayOfUse: CalendarDate;
  note: string;
  /** The day it is promised for; null takes it off. What is left out stays as it is. */
  dueOn?: CalendarDate | null;
  /** How to reach whoever ordered it. */
  contact?: string;
};

/** A new job, and where it stands: agreed unless told. */
export type AddJob = JobFields & { stage?: 'asked' | 'quoted' | 'agreed' };

/** The fields as the book keeps them. */
export function jobRow({ name, purpose, client, dayOfUse, note, dueOn, contact }: JobFields) {
  return {
    name: name.trim(),
    purpose,
    client: client.trim(),
    dayOfUse,
    note: note.trim(),
    ...(dueOn !== undefined && { dueOn }),
    ...(contact !== undefined && { contact: contact.trim() }),
  };
}

export type JobRow = Required<ReturnType<typeof jobRow>>;

export const addJob: Command<AddJob, { jobId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'job-added', request: input }, async (pen) => {
    const row = jobRow(input);
    const { name } = row;
    const twin = await pen.tx.job.findFirst({ where: { name, state: 'open' }, select: { id: true } });
    if (twin) return err({ code: 'name-taken', field: 'name', facts: { name } });
    const { id: jobId } = await pen.tx.job.create({
      data: { ...row, ...(input.stage && { stage: input.stage }), createdAt: pen.now },
      select: { id: true },
    });
    await indexWords(pen.tx, 'job', jobId, [name, input.client]);
    const answer = { jobId, name };
    await pen.enter({ jobId, why: name }, answer);
    return ok(answer);
  });
