import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { ClosedDays, ClosedRange } from '@/shared/timeline/closed-days';

/** A stretch of closed days with the number it is taken off by. */
export type ClosedLine = ClosedRange & { readonly id: number };

/** When the workshop is shut. */
export async function readClosedDays(
  tx: Pick<WriteTransaction, 'book' | 'closedDay'>,
): Promise<Omit<ClosedDays, 'ranges'> & { readonly ranges: readonly ClosedLine[] }> {
  const [head, rows] = await Promise.all([
    tx.book.findUniqueOrThrow({ where: { id: 1 }, select: { closedWeekdays: true } }),
    tx.closedDay.findMany({
      where: STANDS,
      orderBy: [{ fromDay: 'asc' }, { id: 'asc' }],
      select: { id: true, fromDay: true, toDay: true, name: true },
    }),
  ]);
  return {
    weekdays: head.closedWeekdays.split(',').filter(Boolean).map(Number),
    ranges: rows.map(({ id, fromDay, toDay, name }) => ({
      id,
      from: fromDay as CalendarDate,
      to: toDay as CalendarDate,
      name,
    })),
  };
}
