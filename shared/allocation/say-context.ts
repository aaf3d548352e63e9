import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How a book says its amounts and dates; metric and day first unless told. */
export type SayAllocation = {
  readonly today: CalendarDate;
  readonly order?: DateOrder | undefined;
  readonly prefer?: UnitSystem | undefined;
};

/** An amount of stock in words, never more than there is: `1.2 kg`. */
export function sayStock(amount: number, unit: StockUnit, { prefer = 'metric' }: SayAllocation): string {
  return printQuantity(amountOf(unit, amount), unit, { prefer, rounding: 'down' });
}

/** An amount that is wanted or missing in words, never less than it is. */
export function sayWanted(amount: number, unit: StockUnit, { prefer = 'metric' }: SayAllocation): string {
  return printQuantity(amountOf(unit, amount), unit, { prefer, rounding: 'up' });
}

/** A day in words: `12 Dec`. */
export function sayDay(date: CalendarDate, { today, order = 'day-first' }: SayAllocation): string {
  return sayDate(date, { order, today });
}

/** Names in a row: `one`, `one and two`, `one, two and three`; past four, `one, two, three and 2 more`. */
export function sayNames(names: readonly string[]): string {
  const shown = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
  const last = shown.at(-1) ?? '';
  return shown.length > 1 ? `${shown.slice(0, -1).join(', ')} and ${last}` : last;
}
