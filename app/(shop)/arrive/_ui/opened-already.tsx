'use client';

import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { CONDITION_WORDS } from '@/app/(shop)/_parts/condition-words';
import type { LifeUnit } from '@/shared/calendar/life';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';
import type { Card } from '../card';
import styles from './arrive.module.css';
import { LIFE_UNIT_OPTIONS } from './life-field';
import { readSize } from './read-size';
import type { ShopFacts } from './shop-facts';

/** For what was not bought new: the day it was opened, what is left, how it looks. */
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
  const isUsed = card.openedOn !== '' || card.left !== '' || card.conditions.length > 0 || card.openedLifeCount !== '';
  return (
    <Fold title="Opened or part-used already" now={isUsed ? 'yes' : many ? 'no, all sealed' : 'no, sealed'}>
      <DateTextField
        label="Opened on"
        optional
        hint={many ? 'The same for all of them.' : 'The day, as near as you know.'}
        today={shop.today}
        order={shop.order}
        value={card.openedOn}
        onChange={(openedOn) => onChange({ ...card, openedOn })}
        error={errors.openedOn ?? errors.opened}
      />
      {card.openedOn ? (
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
