import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { freeJob, heldByJob } from '@/app/_server/promises/free-job';
import { err, ok } from '@/shared/result/result';

/** `entryId` is what undoing it reverses. */
export type ReleasedAll = { entryId: number; jobId: number; job: string; labels: string[] };

/** Frees everything a job is promised and has not used: it stays open, and others may be promised it. */
export const releaseAll: Command<{ jobId: number; why: string }, ReleasedAll> = (book, by, input) =>
  writeEntry<ReleasedAll>(book, { ...by, kind: 'promises-released', request: input }, async (pen) => {
    const job = await pen.tx.job.findUnique({ where: { id: input.jobId }, select: { name: true } });
    if (!job) return err({ code: 'not-found' });
    const held = await heldByJob(pen.tx, input.jobId);
    if (held.labels.length === 0) return err({ code: 'changes-nothing' });
    const answer = { entryId: pen.entryId, jobId: input.jobId, job: job.name, labels: held.labels };
    await pen.enter({ jobId: input.jobId, why: input.why.trim(), reference: 'everything' }, answer);
    const refused = await freeJob(pen, held);
    return refused ? err(refused) : ok(answer);
  });
