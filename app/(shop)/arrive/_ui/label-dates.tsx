'use client';

import { useState } from 'react';
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
  // Dates that came with the code are folded away. From the first key typed in one, all of them stay where they are: a
  // field that moved under the fingers would lose what is typed next.
  const [typedFor, setTypedFor] = useState<{ product: number; folded: boolean }>();
  const folded = !wrong && (typedFor?.product === card.product.productId ? typedFor.folded : isAny);
  const set = (name: DateName) => (text: string) => {
    setTypedFor({ product: card.product.productId, folded });
    onChange({ ...card, dates: { ...card.dates, [name]: typedDate(text) } });
  };
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
      {folded ? (
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
