'use client';

import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { CONDITION_WORDS } from '@/app/(shop)/_parts/condition-words';
import { LIFE_UNIT_OPTIONS } from '@/app/(shop)/_parts/product/life-field';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { readSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import type { Card } from '@/app/(shop)/arrive/card';
import { openingOn } from '@/app/(shop)/arrive/judge-card';
import type { LifeUnit } from '@/shared/calendar/life';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import type { Opened } from '@/shared/ledger/opened';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';

/** For what was not bought new: whether it is open, since which day, what is left, how it looks. */
export function OpenedAlready({
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
  const many = Number(card.count) > 1;
  const opening = openingOn(card, shop);
  const isRounded = opening !== undefined && isPartOfDate(card.openedOn, shop);
  return (
    <Fold
      title="Opened or part-used already"
      now={card.isOpened ? sayOpening(opening, card.openedOn, shop) : many ? 'no, all sealed' : 'no, sealed'}
    >
      <ChoiceChips
        label={many ? 'Are they still sealed?' : 'Is it still sealed?'}
        options={[
          { value: 'sealed', label: 'Still sealed' },
          { value: 'opened', label: 'No, opened' },
        ]}
        value={card.isOpened ? 'opened' : 'sealed'}
        onChange={(value) =>
          onChange(
            value === 'opened' ? { ...card, isOpened: true } : { ...card, isOpened: false, openedOn: '', left: '' },
          )
        }
      />
      {card.isOpened ? (
        <>
          <DateTextField
            label="Opened on"
            hint={`As near as you know; a month will do. If nobody knows, the earliest it can have been.${many ? ' The same for all of them.' : ''}`}
            today={shop.today}
            order={shop.order}
            aim="past"
            value={card.openedOn}
            onChange={(openedOn) => onChange({ ...card, openedOn })}
            error={errors.openedOn ?? errors.opened}
          />
          {isRounded ? (
            <p role="status" className={styles.note}>
              Goes into the book as {sayDate(opening.on, { order: shop.order })}, the earliest it can have been, and as
              a guess.
            </p>
          ) : card.openedOn ? (
            <ChoiceChips
              label="How sure is that day?"
              options={[
                { value: 'known', label: 'Known' },
                { value: 'guessed', label: 'A guess' },
              ]}
              value={card.sureness}
              onChange={(value) => onChange({ ...card, sureness: value === 'guessed' ? 'guessed' : 'known' })}
            />
          ) : null}
          <QuantityField
            label={many ? 'What is left in each' : 'What is left in it'}
            optional
            hint="Full, if this stays empty."
            value={card.left}
            onChange={(left) => onChange({ ...card, left })}
            read={(text) => readSize(text, card.product.unit, shop.prefer)}
            error={errors.left}
          />
        </>
      ) : null}
      <CheckChips
        label="What you see in it"
        optional
        options={CONDITIONS.map((value) => ({ value, label: CONDITION_WORDS[value] }))}
        values={card.conditions}
        onChange={(conditions) => onChange({ ...card, conditions })}
      />
      <div className={styles.pair}>
        <TextField
          label="Opened, it keeps"
          optional
          inputMode="numeric"
          value={card.openedLifeCount}
          onChange={(openedLifeCount) => onChange({ ...card, openedLifeCount })}
          error={errors.openedLifeCount}
        />
        <SelectField
          label="as printed on it, in"
          options={LIFE_UNIT_OPTIONS}
          value={card.openedLifeUnit}
          onChange={(value) => onChange({ ...card, openedLifeUnit: value as LifeUnit })}
        />
      </div>
    </Fold>
  );
}

/** Whether only a month or a year was typed. */
function isPartOfDate(text: string, shop: ShopFacts): boolean {
  const read = readTypedDate(text, { ...shop, aim: 'past' });
  return read.ok && read.value.precision !== 'day';
}

function sayOpening(opening: Opened | undefined, typed: string, { order }: ShopFacts): string {
  if (opening) return `yes, ${sayDate(opening.on, { order })}${opening.sureness === 'guessed' ? ', a guess' : ''}`;
  return typed.trim() === '' ? 'yes: the day is still to be given' : `yes, ${typed.trim()}`;
}
