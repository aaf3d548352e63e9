import type { Command } from '@/app/_server/act';
import { momentOf, refuseDayOfAmount } from '@/app/_server/ledger/happened-on';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { breakPromises, brokenPromises, losersOf } from '@/app/_server/promises/broken-promises';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';

export type Discard = {
  label: string;
  why: string;
  /** The day it went, where that is not today. */
  happenedOn?: CalendarDate;
};

/** `broken`: the jobs it was promised to, and how much each loses, small units. */
export type Discarded = { label: string; broken: { jobId: number; job: string; amount: number }[] };

/**
 * Takes what is left of a container, or a piece, off the shelf for good: thrown away, given away, lost. What is gone is gone,
 * promised or not: the promises go with it, and the jobs that lose are named.
 */
export const discard: Command<Discard, Discarded> = async (book, by, input) => {
  const happenedAt = await momentOf(book, by.now, input.happenedOn);
  return writeEntry(book, { ...by, kind: 'discarded', request: input, happenedAt }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const row = await pen.tx.stock.findUnique({
      where: { label: input.label },
      select: {
        id: true,
        quantity: true,
        ownerJob: { select: { id: true, name: true } },
        container: { select: { receivedOn: true } },
        piece: { select: { receivedOn: true } },
      },
    });
    const receivedOn = (row?.container ?? row?.piece)?.receivedOn;
    if (!row || receivedOn === undefined) return err({ code: 'not-found' });
    if (row.quantity === 0n) return err({ code: 'already-empty', facts: { label: input.label } });
    const thing = { stockId: row.id, label: input.label, receivedOn: receivedOn as CalendarDate };
    const impossible = await refuseDayOfAmount(pen, thing, input.happenedOn);
    if (impossible) return err(impossible);
    const broken = await brokenPromises(pen.tx, row.id, 0);
    const { ownerJob } = row;
    const answer: Discarded = {
      label: input.label,
      broken: ownerJob ? [{ jobId: ownerJob.id, job: ownerJob.name, amount: 1 }] : losersOf(broken),
    };
    await pen.enter({ why }, answer);
    const moved = await pen.move(row.id, {
      quantityDelta: -Number(row.quantity),
      ...(ownerJob ? { jobId: null } : {}),
    });
    if (!moved.ok) return moved;
    await breakPromises(pen, broken);
    return ok(answer);
  });
};
