import type { Command } from '@/app/_server/act';
import { type PartFields, partRow, refusePart } from '@/app/_server/jobs/part-fields';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { openJob } from '@/app/_server/timeline/open-job';
import { STANDS } from '@/app/_server/timeline/standing';
import { err, ok } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

export type ChangePart = PartFields & { partId: number };

/** Changes a part of a job. What was reckoned from its old size stays as it was reckoned. */
export const changePart: Command<ChangePart, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'part-changed', request: input }, async (pen) => {
    const before = await pen.tx.jobPart.findFirst({ where: { id: input.partId, ...STANDS } });
    if (!before) return err({ code: 'part-gone' });
    const job = await openJob(pen.tx, before.jobId);
    if (!job.ok) return job;
    const refused = refusePart(input);
    if (refused) return err(refused);
    const row = partRow(input);
    const changed = (Object.keys(row) as (keyof typeof row)[]).filter((key) => row[key] !== before[key]);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const say = (value: string | number | bigint | null) =>
      typeof value === 'bigint' ? printLength(nanometres(value), { prefer, denominator: 64 }) : value || 'none';
    const why = changed.map((key) => `${key}: ${say(before[key])} → ${say(row[key])}`).join('; ');
    const answer = { name: row.name };
    await pen.enter({ jobId: before.jobId, why: `${before.name}: ${why}` }, answer);
    await pen.tx.jobPart.update({ where: { id: before.id }, data: row, select: { id: true } });
    return ok(answer);
  });
