import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

/** A job as a form gives it. The day of use is that of the last lift or the last coat. */
export type JobFields = { name: string; purpose: Purpose; client: string; dayOfUse: CalendarDate; note: string };

export const addJob: Command<JobFields, { jobId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'job-added', request: input }, async (pen) => {
    const name = input.name.trim();
    const twin = await pen.tx.job.findFirst({ where: { name, state: 'open' }, select: { id: true } });
    if (twin) return err({ code: 'name-taken', field: 'name', facts: { name } });
    const { id: jobId } = await pen.tx.job.create({
      data: { ...input, name, client: input.client.trim(), note: input.note.trim(), createdAt: pen.now },
      select: { id: true },
    });
    await indexWords(pen.tx, 'job', jobId, [name, input.client]);
    const answer = { jobId, name };
    await pen.enter({ jobId, why: name }, answer);
    return ok(answer);
  });
