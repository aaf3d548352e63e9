import type { Command } from '@/app/_server/act';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepPromises } from '@/app/_server/promises/keep-promises';
import { type PlannedPromise, type PromiseItem, planPromises } from '@/app/_server/promises/plan-promises';
import { sayAmounts } from '@/app/_server/promises/say-amounts';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

export type Reserve = {
  jobId: number;
  items: readonly PromiseItem[];
  /** The day it is needed on; the job's day of use where none is given. */
  day?: CalendarDate;
};

/** `entryId` is what undoing it reverses. */
export type Reserved = { entryId: number; jobId: number; job: string; promised: Omit<PlannedPromise, 'stockId'>[] };

/**
 * Promises containers by amount, pieces whole, or so much of a lot to a job: all of it, or nothing where any is promised to
 * another, is not there, or would be a Stop on the day. Who asks first has it; the other is told who and when.
 */
export const reserve: Command<Reserve, Reserved> = (book, by, input) =>
  writeEntry<Reserved>(book, { ...by, kind: 'reserved', request: input }, async (pen) => {
    const job = await pen.tx.job.findUnique({
      where: { id: input.jobId },
      select: { id: true, name: true, purpose: true, state: true, dayOfUse: true },
    });
    if (!job) return err({ code: 'not-found', field: 'jobId' });
    const closed = refuseClosedJob(job);
    if (closed) return err(closed);
    const day = input.day ?? (job.dayOfUse as CalendarDate);
    const planned = await planPromises(pen, { ...job, purpose: job.purpose as Purpose, day }, input.items);
    if (!planned.ok) return planned;
    if (planned.value.length === 0) return err({ code: 'changes-nothing' });
    const promised = planned.value.map(({ stockId: _, ...each }) => each);
    const answer: Reserved = { entryId: pen.entryId, jobId: job.id, job: job.name, promised };
    await pen.enter({ jobId: job.id, reference: sayAmounts(promised, pen.book.units) }, answer);
    const refused = await keepPromises(pen, job.id, planned.value);
    return refused ? err(refused) : ok(answer);
  });
