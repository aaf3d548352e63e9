import type { Command } from '@/app/_server/act';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type NeedFields, needColumns } from '@/app/_server/needs/need-fields';
import { err, ok } from '@/shared/result/result';

export type AddNeed = NeedFields & { jobId: number };

/** Writes down what a job needs. */
export const addNeed: Command<AddNeed, { entryId: number; words: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'need-added', request: input }, async (pen) => {
    const { jobId } = input;
    const job = await pen.tx.job.findUnique({ where: { id: jobId }, select: { name: true, state: true } });
    if (!job) return err({ code: 'not-found', field: 'jobId' });
    const closed = refuseClosedJob(job);
    if (closed) return err(closed);
    const read = await needColumns(pen, jobId, input);
    if (!read.ok) return read;
    const { columns, words } = read.value;
    const answer = { entryId: pen.entryId, words };
    await pen.enter({ jobId, productId: columns.productId, why: words }, answer);
    await pen.tx.need.create({ data: { ...columns, jobId, entryId: pen.entryId }, select: { id: true } });
    return ok(answer);
  });
