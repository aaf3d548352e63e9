import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

export type BookHead = {
  name: string;
  timeZone: string;
  units: 'metric' | 'imperial';
  currency: string;
  dateOrder: 'day-first' | 'month-first';
  demo: boolean;
  revision: number;
  /** Today in the workshop's own time zone. */
  today: CalendarDate;
};

/** The book's title page, or undefined where no book was begun. */
export async function readBook(book: OpenBook, now: Date): Promise<BookHead | undefined> {
  const row = await book.read.book.findUnique({ where: { id: 1 } });
  if (!row) return undefined;
  return {
    name: row.name,
    timeZone: row.timeZone,
    units: row.units === 'imperial' ? 'imperial' : 'metric',
    currency: row.currency,
    dateOrder: row.dateOrder === 'month-first' ? 'month-first' : 'day-first',
    demo: row.demo,
    revision: row.revision,
    today: dateIn(row.timeZone, now),
  };
}
