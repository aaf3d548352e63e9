import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

type Given = Record<string, string | string[] | undefined>;

/** What the address asks to be ordered, as it would be typed; what does not read is left empty. */
export function readAsked(
  given: Given,
  products: readonly { id: number; unit: StockUnit }[],
  { dateOrder: order }: { dateOrder: DateOrder },
) {
  const one = (name: string) => (typeof given[name] === 'string' ? given[name].slice(0, 200) : '');
  const product = products.find((each) => String(each.id) === one('product'));
  const unit = product?.unit ?? 'piece';
  const number = Number(one('amount'));
  const amount = Number.isSafeInteger(number) && number > 0 ? printQuantityExact(amountOf(unit, number), unit) : '';
  const due = parseCalendarDate(one('due'));
  return {
    productId: product ? String(product.id) : '',
    words: product ? '' : one('words'),
    amount,
    dueOn: due.ok ? sayDate(due.value, { order }) : '',
    given: Boolean(product) || one('words') !== '',
  };
}
