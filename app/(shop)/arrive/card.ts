import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { ArrivalProduct } from '@/app/_server/products/arrival-product';
import { sizeText } from '@/app/(shop)/arrive/size-text';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { LifeUnit } from '@/shared/calendar/life';
import { sayDate } from '@/shared/calendar/say-date';
import type { Condition } from '@/shared/shelf-life/types/container-facts';
import type { UnitSystem } from '@/shared/units/unit-system';

export const DATE_NAMES = ['useBy', 'bestBefore', 'madeOn'] as const;
export type DateName = (typeof DATE_NAMES)[number];

export const DATE_WORDS: Record<DateName, string> = { useBy: 'Use by', bestBefore: 'Best before', madeOn: 'Made on' };

/** A date on the card. One a code gave stays unconfirmed until a person has looked; one typed by a person is confirmed. */
export type CardDate = { readonly text: string; readonly fromCode: boolean; readonly confirmed: boolean };

/** The arrival card: what is known of the containers that just came in, as it stands in the fields. */
export type Card = {
  readonly product: ArrivalProduct;
  readonly lot: string;
  readonly dates: Readonly<Record<DateName, CardDate>>;
  /** Serial numbers already counted: each is one container. */
  readonly serials: readonly string[];
  readonly count: string;
  readonly size: string;
  readonly cost: string;
  readonly placeLabel: string;
  /** A place that is named here and not in the book yet: the same press that books the card adds it. */
  readonly newPlace: string;
  readonly receivedOn: string;
  readonly isOpened: boolean;
  readonly openedOn: string;
  readonly sureness: 'known' | 'guessed';
  readonly left: string;
  readonly conditions: readonly Condition[];
  readonly openedLifeCount: string;
  readonly openedLifeUnit: LifeUnit;
  readonly quarantine: boolean;
  readonly reference: string;
};

/** What a card is of, in a few words: `Deep-pour resin, part A, lot K26-114`. */
export const sayCard = ({ product, lot }: Card): string =>
  lot.trim() ? `${product.name}, lot ${lot.trim()}` : product.name;

const NO_DATE: CardDate = { text: '', fromCode: false, confirmed: false };

/** The dates of a label that the card keeps. */
export function datesOnLabel(says: LabelSays, order: DateOrder): Partial<Record<DateName, CardDate>> {
  const found: Partial<Record<DateName, CardDate>> = {};
  for (const name of DATE_NAMES) {
    const printed = says.dates[name];
    if (!printed) continue;
    found[name] = {
      text: sayDate(printed.date, { order, precision: printed.precision }),
      fromCode: true,
      confirmed: false,
    };
  }
  return found;
}

/** A fresh card for a product, with what its label says filled in. */
export function newCard(
  product: ArrivalProduct,
  says: LabelSays,
  {
    today,
    order,
    prefer,
    placeLabel,
  }: { today: CalendarDate; order: DateOrder; prefer: UnitSystem; placeLabel: string },
): Card {
  return {
    product,
    lot: says.lot ?? '',
    dates: { useBy: NO_DATE, bestBefore: NO_DATE, madeOn: NO_DATE, ...datesOnLabel(says, order) },
    serials: says.serial ? [says.serial] : [],
    count: '1',
    size: sizeText(product.packageSize, product.unit, prefer),
    cost: '',
    placeLabel,
    newPlace: '',
    receivedOn: sayDate(today, { order }),
    isOpened: false,
    openedOn: '',
    sureness: 'known',
    left: '',
    conditions: [],
    openedLifeCount: '',
    openedLifeUnit: 'month',
    quarantine: false,
    reference: '',
  };
}

/** A date as a person types it over what was there. */
export const typedDate = (text: string): CardDate => ({ text, fromCode: false, confirmed: text.trim() !== '' });

/** The same card with every date that a code gave confirmed by a person. */
export function confirmDates(card: Card): Card {
  const confirm = (date: CardDate): CardDate => (date.text ? { ...date, confirmed: true } : date);
  const { useBy, bestBefore, madeOn } = card.dates;
  return { ...card, dates: { useBy: confirm(useBy), bestBefore: confirm(bestBefore), madeOn: confirm(madeOn) } };
}

export const hasUnconfirmed = (card: Card): boolean =>
  DATE_NAMES.some((name) => card.dates[name].text !== '' && !card.dates[name].confirmed);

export const hasDate = (card: Card): boolean => DATE_NAMES.some((name) => card.dates[name].text.trim() !== '');
