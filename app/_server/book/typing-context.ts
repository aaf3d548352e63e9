import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { type CurrencyCode, readCurrency } from '@/shared/units/currency';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How this workshop's typed numbers and dates are to be read. */
export type TypingContext = {
  today: CalendarDate;
  order: 'day-first' | 'month-first';
  prefer: UnitSystem;
  currency: CurrencyCode;
};

/** The context for a form's schema. Throws where no book was begun: no form can be open then. */
export async function typingContext(): Promise<TypingContext> {
  const head = await readBook(await theBook(), new Date());
  if (!head) throw new Error('A form was sent to a book that was not begun.');
  return {
    today: head.today,
    order: head.dateOrder,
    prefer: head.units,
    currency: unwrap(readCurrency(head.currency)),
  };
}
