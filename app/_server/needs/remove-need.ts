import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { nameOf } from '@/app/_server/needs/need-name';
import { needToChange } from '@/app/_server/needs/need-to-change';
import { freeStanding } from '@/app/_server/promises/free-standing';
import { standingOf } from '@/app/_server/promises/standing-of';
import { ok } from '@/shared/result/result';

/** Takes a need off. What was promised for it is free again; undoing the entry brings both back. */
export const removeNeed: Command<{ needId: number }, { entryId: number; jobId: number; words: string }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'need-removed', request: input }, async (pen) => {
    const read = await needToChange(pen, input.needId);
    if (!read.ok) return read;
    const need = read.value;
    const standing = (await standingOf(pen.tx, { jobId: need.jobId })).filter((each) => each.needId === need.id);
    const answer = { entryId: pen.entryId, jobId: need.jobId, words: nameOf(need) };
    await pen.enter({ jobId: need.jobId, productId: need.product?.id, why: answer.words }, answer);
    await pen.tx.need.update({ where: { id: need.id }, data: { removedById: pen.entryId }, select: { id: true } });
    await freeStanding(pen, standing);
    return ok(answer);
  });
