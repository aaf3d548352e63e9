import type { Command } from '@/app/_server/act';
import { refusePartInUse } from '@/app/_server/jobs/refuse-part-in-use';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { openJob } from '@/app/_server/timeline/open-job';
import { STANDS } from '@/app/_server/timeline/standing';
import { err, ok } from '@/shared/result/result';

/** Takes a part off a job. Refused while a pour is planned for it, or steps of the time line belong to it: they go first. */
export const removePart: Command<{ partId: number }, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'part-removed', request: input }, async (pen) => {
    const part = await pen.tx.jobPart.findFirst({ where: { id: input.partId, ...STANDS } });
    if (!part) return err({ code: 'part-gone' });
    const job = await openJob(pen.tx, part.jobId);
    if (!job.ok) return job;
    const used = await refusePartInUse(pen.tx, part);
    if (used) return err(used);
    const answer = { name: part.name };
    await pen.enter({ jobId: part.jobId, why: part.name }, answer);
    await pen.tx.jobPart.update({ where: { id: part.id }, data: { removedById: pen.entryId }, select: { id: true } });
    return ok(answer);
  });
