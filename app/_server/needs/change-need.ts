import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type NeedFields, needColumns } from '@/app/_server/needs/need-fields';
import { needToChange } from '@/app/_server/needs/need-to-change';
import { standingOf } from '@/app/_server/promises/standing-of';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import { takeFromPromises } from '@/shared/promise/take-from-promises';
import { ok } from '@/shared/result/result';

export type ChangeNeed = NeedFields & { needId: number };

/**
 * Changes a need: another takes its place, so that what was asked before stays in the book. What was promised for it goes
 * over to the new one where the material is the same; beyond the new amount, and of another material, it is free again.
 */
export const changeNeed: Command<ChangeNeed, { entryId: number; words: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'need-changed', request: input }, async (pen) => {
    const before = await needToChange(pen, input.needId);
    if (!before.ok) return before;
    const { id, jobId, product, system, unit, amount } = before.value;
    const read = await needColumns(pen, jobId, input);
    if (!read.ok) return read;
    const { columns, words } = read.value;
    const partId = await pen.tx.need.findUniqueOrThrow({ where: { id }, select: { partId: true } });
    const standing = (await standingOf(pen.tx, { jobId })).filter((each) => each.needId === id);
    const isSame =
      (columns.productId ?? null) === (product?.id ?? null) &&
      (columns.systemId ?? null) === (system?.id ?? null) &&
      columns.resinPart === (system?.part ?? null) &&
      columns.unit === unit;
    const answer = { entryId: pen.entryId, words };
    await pen.enter({ jobId, productId: columns.productId, why: words }, answer);
    const { id: needId } = await pen.tx.need.create({
      data: { ...partId, ...columns, jobId, entryId: pen.entryId },
      select: { id: true },
    });
    await pen.tx.need.update({ where: { id }, data: { removedById: pen.entryId }, select: { id: true } });
    await enterBeside(
      pen,
      standing.map((each) => each.stockId),
    );
    const all = standing.reduce((sum, each) => sum + each.amount, 0);
    // Of what was promised for so much, no more goes over than the same share of the new amount.
    let over = isSame ? Math.ceil((all * Math.min(Number(columns.amount), amount)) / amount) : 0;
    for (const { amount: held, ...line } of takeFromPromises(standing, all, { first: 'oldest' })) {
      await writePromise(pen, { ...line, delta: -held });
      const kept = Math.min(over, held);
      over -= kept;
      if (kept > 0) await writePromise(pen, { ...line, needId, delta: kept });
    }
    return ok(answer);
  });
