import type { KnownLot } from '@/app/_server/products/arrival-product';
import type { Card, CardDate, DateName } from '@/app/(shop)/arrive/card';
import { DATE_NAMES } from '@/app/(shop)/arrive/card';
import { openingOf } from '@/app/(shop)/arrive/opening-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { parseLife } from '@/shared/calendar/life';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import type { Opened } from '@/shared/ledger/opened';
import { judge } from '@/shared/shelf-life/judge';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import { parseQuantity } from '@/shared/units/parse-quantity';
import type { UnitSystem } from '@/shared/units/unit-system';

type Context = { readonly today: CalendarDate; readonly order: DateOrder; readonly prefer: UnitSystem };

/** The lot of the book that this card's lot code names, if it is there already. */
export function knownLotOf(card: Card): KnownLot | undefined {
  const code = card.lot.trim();
  return code ? card.product.lots.find((lot) => lot.code === code) : undefined;
}

function labelDate(date: CardDate, { today, order }: Context): LabelDate | undefined {
  const read = readTypedDate(date.text, { today, order });
  if (!read.ok || read.value.ambiguous) return undefined;
  return { date: read.value.date, precision: read.value.precision, confirmed: date.confirmed };
}

/** When what is on the card was opened, as far as its day reads. */
export function openingOn(card: Card, { today, order }: Pick<Context, 'today' | 'order'>): Opened | undefined {
  const read = readTypedDate(card.openedOn, { today, order, aim: 'past' });
  return read.ok && !read.value.ambiguous ? openingOf(read.value, card.sureness) : undefined;
}

/**
 * How what arrives stands today for a client's piece, from the card as it is typed so far. What does not read yet counts
 * as not there; the lot's own dates in the book stand before the label's. A quarantine chosen here is left out: it says
 * what will be done, not how the goods arrived.
 */
export function judgeCard(card: Card, context: Context): Verdict {
  const { product } = card;
  const known = knownLotOf(card);
  const dates: Partial<Record<DateName, LabelDate>> = {};
  for (const name of DATE_NAMES) {
    const date = known?.facts[name] ?? labelDate(card.dates[name], context);
    if (date) dates[name] = date;
  }
  const opened = openingOn(card, context);
  const left = parseQuantity(card.left, { unit: product.unit, prefer: context.prefer });
  const life = parseLife(Number(card.openedLifeCount || Number.NaN), card.openedLifeUnit);
  return judge({
    policy: product.policy,
    lot: { id: known?.facts.id ?? 'new', code: card.lot.trim(), hold: known?.facts.hold ?? 'free', ...dates },
    container: {
      id: 'new',
      label: '',
      left: left.ok && left.value > 0 ? left.value : product.packageSize,
      opened,
      conditions: card.conditions,
      hold: 'free',
      statedOpenedLife: life.ok ? life.value : undefined,
    },
    inspections: known?.inspections ?? [],
    purpose: 'client',
    dayOfUse: context.today,
    today: context.today,
  });
}
