'use client';

import { DateTextField } from '@/app/_ui/field/date-text-field';
import { Fold } from '@/app/_ui/fold';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { type Card, DATE_NAMES, DATE_WORDS, type DateName, typedDate } from '@/app/(shop)/arrive/card';

/** The dates printed on it, each to be typed or typed over. */
export function LabelDates({
  card,
  shop,
  onChange,
  errors,
}: {
  card: Card;
  shop: ShopFacts;
  onChange: (card: Card) => void;
  errors: Readonly<Record<string, string>>;
}) {
  const isAny = DATE_NAMES.some((name) => card.dates[name].text !== '');
  const wrong = DATE_NAMES.some((name) => errors[name]);
  const set = (name: DateName) => (text: string) =>
    onChange({ ...card, dates: { ...card.dates, [name]: typedDate(text) } });
  const fields = DATE_NAMES.map((name) => (
    <DateTextField
      key={name}
      label={DATE_WORDS[name]}
      optional
      today={shop.today}
      order={shop.order}
      value={card.dates[name].text}
      onChange={set(name)}
      error={errors[name]}
    />
  ));
  return (
    <>
      {isAny && !wrong ? (
        <Fold
          title="Change the dates"
          now={DATE_NAMES.flatMap((name) =>
            card.dates[name].text ? `${DATE_WORDS[name].toLowerCase()} ${card.dates[name].text}` : [],
          ).join(', ')}
        >
          {fields}
        </Fold>
      ) : (
        fields
      )}
    </>
  );
}
