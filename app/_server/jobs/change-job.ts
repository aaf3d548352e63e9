import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { type JobFields, type JobRow, jobRow } from '@/app/_server/jobs/add-job';
import { changedMeanwhile } from '@/app/_server/jobs/changed-meanwhile';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { err, ok } from '@/shared/result/result';
import { lastUse } from '@/shared/timeline/last-use';

/** `was`: the job as the form was opened on it; left out where there was no form. */
export type ChangeJob = JobFields & { jobId: number; was?: JobFields };

/**
 * Changes what is said of a job; where it stands is `setStage`'s matter. Where it has a time line, its day of use is that
 * of the last lift or coat, whatever is said here. Refused where somebody changed it since the form was opened.
 */
export const changeJob: Command<ChangeJob, { jobId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'job-changed', request: input }, async (pen) => {
    const { jobId, was } = input;
    const before = await pen.tx.job.findUnique({ where: { id: jobId } });
    if (!before) return err({ code: 'not-found' });
    const { dayOfUse, ...rest } = jobRow(input);
    const follows = lastUse(await readSteps(pen.tx, jobId)) !== undefined;
    const row: Partial<JobRow> = follows ? rest : { ...rest, dayOfUse };
    const fields = Object.keys(row) as (keyof JobRow)[];
    const stale = was && (await changedMeanwhile(pen.tx, before, was, fields));
    if (stale) return err(stale);
    const changed = fields.filter((key) => row[key] !== before[key]);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    await pen.tx.job.update({ where: { id: jobId }, data: row, select: { id: true } });
    await keepDayOfUse(pen.tx, jobId);
    await indexWords(pen.tx, 'job', jobId, [rest.name, rest.client]);
    const answer = { jobId };
    const why = changed.map((key) => `${key}: ${before[key] || 'none'} → ${row[key] || 'none'}`).join('; ');
    await pen.enter({ jobId, why }, answer);
    return ok(answer);
  });
