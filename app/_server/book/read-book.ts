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

type Row = {
  name: string;
  timeZone: string;
  units: string;
  currency: string;
  dateOrder: string;
  demo: boolean;
  revision: number;
};

/** The book's title page, or undefined where no book was begun. */
export async function readBook(book: OpenBook, now: Date): Promise<BookHead | undefined> {
  // In SQL: it is read for every page and answer, and takes a quarter of the client's own way.
  const [row] = await book.read.$queryRaw<Row[]>`
    SELECT "name", "timeZone", "units", "currency", "dateOrder", "demo", "revision" FROM "Book" WHERE "id" = 1`;
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
