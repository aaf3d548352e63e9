import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

/** A moisture reading of a piece, as the meter showed it: tenths of a per cent, 0 to 250 %. */
export type RecordReading = { label: string; takenOn: CalendarDate; mcTenths: number; meter: string; spot: string };

export const recordReading: Command<RecordReading, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'reading-taken', request: input }, async (pen) => {
    const piece = await pen.tx.piece.findFirst({ where: { stock: { label: input.label } }, select: { stockId: true } });
    if (!piece) return err({ code: 'not-found' });
    if (input.takenOn > dateIn(pen.book.timeZone, pen.now))
      return err({ code: 'received-in-the-future', field: 'takenOn' });
    if (!Number.isInteger(input.mcTenths) || input.mcTenths < 0 || input.mcTenths > 2500) {
      return err({ code: 'outside-range', field: 'mcTenths' });
    }
    const { label, ...reading } = input;
    await pen.enter(
      {
        why: `${input.mcTenths / 10} %, ${[input.meter, input.spot].filter(Boolean).join(', ')}`,
        stockId: piece.stockId,
      },
      { label },
    );
    await pen.tx.reading.create({
      data: { ...reading, pieceId: piece.stockId, entryId: pen.entryId },
      select: { id: true },
    });
    return ok({ label });
  });
