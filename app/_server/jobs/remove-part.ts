import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { openJob } from '@/app/_server/timeline/open-job';
import { STANDS } from '@/app/_server/timeline/standing';
import { err, ok } from '@/shared/result/result';

/** Takes a part off a job. Refused while a pour is planned for it: that goes first. */
export const removePart: Command<{ partId: number }, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'part-removed', request: input }, async (pen) => {
    const part = await pen.tx.jobPart.findFirst({ where: { id: input.partId, ...STANDS } });
    if (!part) return err({ code: 'part-gone' });
    const job = await openJob(pen.tx, part.jobId);
    if (!job.ok) return job;
    const pour = await pen.tx.pour.findFirst({ where: { partId: part.id, ...STANDS }, select: { name: true } });
    if (pour) return err({ code: 'part-has-a-pour', facts: { part: part.name, pour: pour.name } });
    const answer = { name: part.name };
    await pen.enter({ jobId: part.jobId, why: part.name }, answer);
    await pen.tx.jobPart.update({ where: { id: part.id }, data: { removedById: pen.entryId }, select: { id: true } });
    return ok(answer);
  });
