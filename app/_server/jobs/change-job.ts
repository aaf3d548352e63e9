import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { type JobFields, jobRow } from '@/app/_server/jobs/add-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { freeJob, heldByJob } from '@/app/_server/promises/free-job';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { err, ok } from '@/shared/result/result';
import { type JobStage, stateOfStage } from '@/shared/timeline/job-stage';

export type ChangeJob = JobFields & { jobId: number; state: 'open' | 'done' | 'dropped' };

/** The stage a job stands at when only its state is said: where it fits that already, it stays. */
const STAGE_OF = { open: 'agreed', done: 'delivered', dropped: 'dropped' } as const;

/**
 * Changes a job. Dropping it, or saying it is done, frees what was promised to it and not used. Where it has a time line,
 * its day of use is that of the last lift or coat, whatever is said here.
 */
export const changeJob: Command<ChangeJob, { jobId: number; freed: string[] }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'job-changed', request: input }, async (pen) => {
    const before = await pen.tx.job.findUnique({ where: { id: input.jobId } });
    if (!before) return err({ code: 'not-found' });
    const { jobId, state } = input;
    const row = { ...jobRow(input), state };
    const changed = (Object.keys(row) as (keyof typeof row)[]).filter((key) => row[key] !== before[key]);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    const stage = stateOfStage(before.stage as JobStage) === state ? before.stage : STAGE_OF[state];
    await pen.tx.job.update({ where: { id: jobId }, data: { ...row, stage }, select: { id: true } });
    await keepDayOfUse(pen.tx, jobId);
    await indexWords(pen.tx, 'job', jobId, [row.name, row.client]);
    const held = row.state === 'open' ? undefined : await heldByJob(pen.tx, jobId);
    const answer = { jobId, freed: held?.labels ?? [] };
    const why = changed.map((key) => `${key}: ${before[key] || 'none'} → ${row[key] || 'none'}`).join('; ');
    await pen.enter({ jobId, why }, answer);
    const refused = held && (await freeJob(pen, held));
    return refused ? err(refused) : ok(answer);
  });
