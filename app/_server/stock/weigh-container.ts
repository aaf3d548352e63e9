import type { Command } from '@/app/_server/act';
import { momentOf, refuseDayOfAmount } from '@/app/_server/ledger/happened-on';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { breakPromises, brokenPromises, losersOf } from '@/app/_server/promises/broken-promises';
import { loadContainer } from '@/app/_server/stock/load-container';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';

export type WeighContainer = {
  label: string;
  /** What is in it, in its small unit. */
  left: number;
  why: string;
  /** The day it was weighed, where that is not today: at the end of that day. */
  happenedOn?: CalendarDate;
};

/** `broken`: the jobs that were promised more than is there, and how much each loses, small units. */
export type WeighedAgain = {
  label: string;
  delta: number;
  broken: { jobId: number; job: string; amount: number }[];
};

/**
 * What is really left in a container, in its small unit, as weighed or measured. The scale is right: where less is there
 * than was promised, the newest promises are lowered in the same entry, and the jobs that lose are named.
 */
export const weighContainer: Command<WeighContainer, WeighedAgain> = async (book, by, input) => {
  const happenedAt = await momentOf(book, by.now, input.happenedOn);
  return writeEntry(book, { ...by, kind: 'weighed', request: input, happenedAt }, async (pen) => {
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found' });
    if (!Number.isSafeInteger(input.left) || input.left < 0) return err({ code: 'not-an-exact-amount', field: 'left' });
    // A tin may hold a little more than its label says; twice as much is a slipped digit.
    if (input.left > line.size * 2) return err({ code: 'unit-does-not-fit', field: 'left' });
    const impossible = await refuseDayOfAmount(pen, line, input.happenedOn);
    if (impossible) return err(impossible);
    const delta = input.left - line.left;
    const broken = await brokenPromises(pen.tx, line.stockId, input.left);
    const answer: WeighedAgain = { label: line.label, delta, broken: losersOf(broken) };
    await pen.enter({ why: input.why, productId: line.productId }, answer);
    const moved = await pen.move(line.stockId, { quantityDelta: delta });
    if (!moved.ok) return moved;
    await breakPromises(pen, broken);
    return ok(answer);
  });
};
