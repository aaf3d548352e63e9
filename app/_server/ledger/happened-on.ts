import { readBook } from '@/app/_server/book/read-book';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { noonIn } from '@/shared/calendar/noon-in';

/** The instant to keep for a day other than today; undefined for today, and for a day that is refused anyway. */
export async function momentOf(book: OpenBook, now: Date, day: CalendarDate | undefined): Promise<Date | undefined> {
  const head = day === undefined ? null : await readBook(book, now);
  return day !== undefined && head && day < head.today ? noonIn(head.timeZone, day) : undefined;
}

type Thing = { stockId: number; label: string; receivedOn: CalendarDate };

/** The refusal for a day on which nothing can have happened to a thing: one to come, or before it came in. */
export function refuseDay(pen: Pen, thing: Thing, day: CalendarDate | undefined): Refusal | undefined {
  if (day === undefined) return undefined;
  if (day > dateIn(pen.book.timeZone, pen.now)) return { code: 'received-in-the-future', field: 'happenedOn' };
  if (day >= thing.receivedOn) return undefined;
  const facts = { label: thing.label, received: thing.receivedOn };
  return { code: 'happened-before-it-arrived', field: 'happenedOn', facts };
}

/**
 * The same for what says how much there was: also refused where more was put in or taken out on a later day, because the
 * book would then say of that later day what cannot have been.
 */
export async function refuseDayOfAmount(
  pen: Pen,
  thing: Thing,
  day: CalendarDate | undefined,
): Promise<Refusal | undefined> {
  const refusal = refuseDay(pen, thing, day);
  if (refusal || day === undefined) return refusal;
  const latest = await pen.tx.movement.findFirst({
    where: {
      stockId: thing.stockId,
      NOT: { quantityDelta: 0 },
      reversesId: null,
      reversedBy: null,
      // What came in is written when it is, whatever day it came in on.
      entry: { kind: { not: 'received' } },
    },
    orderBy: { entry: { happenedAt: 'desc' } },
    select: { entry: { select: { happenedAt: true } } },
  });
  if (!latest) return undefined;
  const since = dateIn(pen.book.timeZone, latest.entry.happenedAt);
  if (since <= day) return undefined;
  return { code: 'changed-after-that-day', field: 'happenedOn', facts: { label: thing.label, since } };
}
