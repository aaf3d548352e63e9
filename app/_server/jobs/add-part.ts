import type { Command } from '@/app/_server/act';
import { type PartFields, partRow, refusePart } from '@/app/_server/jobs/part-fields';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { openJob } from '@/app/_server/timeline/open-job';
import { err, ok } from '@/shared/result/result';

export type AddPart = PartFields & { jobId: number };

/** Adds a part to a job: a top with its shape and size, a base part, or whatever else is made. */
export const addPart: Command<AddPart, { entryId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'part-added', request: input }, async (pen) => {
    const job = await openJob(pen.tx, input.jobId);
    if (!job.ok) return job;
    const refused = refusePart(input);
    if (refused) return err(refused);
    const row = partRow(input);
    const answer = { entryId: pen.entryId, name: row.name };
    await pen.enter({ jobId: input.jobId, why: row.count === 1 ? row.name : `${row.count} × ${row.name}` }, answer);
    await pen.tx.jobPart.create({
      data: { ...row, jobId: input.jobId, entryId: pen.entryId },
      select: { id: true },
    });
    return ok(answer);
  });
