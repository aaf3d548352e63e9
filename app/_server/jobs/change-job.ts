import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import type { JobFields } from '@/app/_server/jobs/add-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

export type ChangeJob = JobFields & { jobId: number; state: 'open' | 'done' | 'dropped' };

/** Changes a job. Dropping it, or saying it is done, frees the pieces that were promised to it and not used. */
export const changeJob: Command<ChangeJob, { jobId: number; freed: string[] }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'job-changed', request: input }, async (pen) => {
    const before = await pen.tx.job.findUnique({ where: { id: input.jobId } });
    if (!before) return err({ code: 'not-found' });
    const { jobId, ...fields } = input;
    const row = { ...fields, name: input.name.trim(), client: input.client.trim(), note: input.note.trim() };
    const changed = (Object.keys(row) as (keyof typeof row)[]).filter((key) => row[key] !== before[key]);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    await pen.tx.job.update({ where: { id: jobId }, data: row, select: { id: true } });
    await indexWords(pen.tx, 'job', jobId, [row.name, row.client]);
    const promised =
      row.state === 'open'
        ? []
        : await pen.tx.stock.findMany({
            where: { ownerJobId: jobId, quantity: { gt: 0 } },
            select: { id: true, label: true },
          });
    const answer = { jobId, freed: promised.flatMap((each) => each.label ?? []) };
    const why = changed.map((key) => `${key}: ${before[key] || 'none'} → ${row[key] || 'none'}`).join('; ');
    await pen.enter({ jobId, why }, answer);
    for (const each of promised) {
      const moved = await pen.move(each.id, { jobId: null });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });
