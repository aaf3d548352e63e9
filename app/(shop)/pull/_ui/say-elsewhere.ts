import type { PromisedElsewhere } from '@/app/_server/pull/promised-elsewhere';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Who else it is promised to, and what that leaves: `2 kg is promised to Console for 1 Dec. 3 kg is free for this.` */
export function sayElsewhere(
  { free, to }: PromisedElsewhere,
  context: {
    readonly today: CalendarDate;
    readonly order: DateOrder;
    readonly prefer: UnitSystem;
    readonly unit: StockUnit;
  },
): string {
  const { unit, prefer, order, today } = context;
  const amount = (value: number) => printQuantity(amountOf(unit, value), unit, { prefer });
  const said = to.map((each) => {
    const by = each.on ? `, by ${each.who} on ${sayDate(each.on, { order, today })}` : '';
    return `${amount(each.amount)} to ${each.job} for ${sayDate(each.day, { order, today })}${by}`;
  });
  const left = free > 0 ? `${amount(free)} is free for this.` : 'Nothing of it is free for this.';
  return `Promised: ${said.join('; ')}. ${left}`;
}
