import type { Command } from '@/app/_server/act';
import { momentOf, refuseDayOfAmount } from '@/app/_server/ledger/happened-on';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok } from '@/shared/result/result';

export type Discard = {
  label: string;
  why: string;
  /** The day it went, where that is not today. */
  happenedOn?: CalendarDate;
};

/** Takes what is left of a container, or a piece, off the shelf for good: thrown away, given away, lost. */
export const discard: Command<Discard, { label: string }> = async (book, by, input) => {
  const happenedAt = await momentOf(book, by.now, input.happenedOn);
  return writeEntry(book, { ...by, kind: 'discarded', request: input, happenedAt }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const row = await pen.tx.stock.findUnique({
      where: { label: input.label },
      select: {
        id: true,
        quantity: true,
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
    await pen.enter({ why }, { label: input.label });
    const moved = await pen.move(row.id, { quantityDelta: -Number(row.quantity) });
    return moved.ok ? ok({ label: input.label }) : moved;
  });
};
