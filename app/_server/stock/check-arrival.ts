import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { err, ok, type Result } from '@/shared/result/result';

/** What every arrival of wood says beside its measures. */
export type WoodArrival = {
  receivedOn: CalendarDate;
  placeLabel?: string;
  reading?: { mcTenths: number; meter: string; spot: string };
};

/** Whether so many things can have come in that day, read so wet, to a place of the book: the id of that place. */
export async function checkArrival(
  pen: Pen,
  count: number,
  { receivedOn, placeLabel, reading }: WoodArrival,
): Promise<Result<number | null, Refusal>> {
  if (!Number.isInteger(count) || count < 1 || count > MOST_AT_ONCE) {
    return err({ code: 'absurd-count', field: 'count' });
  }
  if (receivedOn > dateIn(pen.book.timeZone, pen.now)) {
    return err({ code: 'received-in-the-future', field: 'receivedOn' });
  }
  const mc = reading?.mcTenths ?? 0;
  if (!Number.isInteger(mc) || mc < 0 || mc > 2500) return err({ code: 'outside-range', field: 'reading' });
  if (!placeLabel) return ok(null);
  const place = await pen.tx.place.findUnique({ where: { label: placeLabel }, select: { id: true } });
  return place ? ok(place.id) : err({ code: 'not-found', field: 'placeLabel' });
}
