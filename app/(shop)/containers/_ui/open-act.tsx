'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { openAction } from '@/app/(shop)/containers/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { Opened } from '@/shared/ledger/opened';

/** Writes the day a container was opened, or corrects it. */
export function OpenAct({
  label,
  opened,
  today,
  order,
}: {
  label: string;
  opened: Opened | null;
  today: CalendarDate;
  order: DateOrder;
}) {
  const [on, setOn] = useState(opened ? '' : sayDate(today, { order }));
  const [sureness, setSureness] = useState('known');
  const now = opened
    ? `${sayDate(opened.on, { order, today })}${opened.sureness === 'guessed' ? ', a guess' : ''}`
    : 'still sealed';
  return (
    <Fold group="act" title={opened ? 'Correct the opened day' : 'Open it'} now={now}>
      <ActForm
        action={openAction}
        input={{ label, opened: on, sureness, why: '' }}
        words={opened ? 'Write the opened day' : 'Write that it is open'}
        done="The opened day is in the book."
      >
        {(errors) => (
          <>
            <DateTextField
              label="Opened on"
              hint="From this day it keeps as long as its label or data sheet says once opened."
              today={today}
              order={order}
              aim="past"
              value={on}
              onChange={setOn}
              error={errors.opened}
            />
            <ChoiceChips
              label="How sure is that?"
              options={[
                { value: 'known', label: 'Known' },
                { value: 'guessed', label: 'A guess', hint: 'Pull says Care' },
              ]}
              value={sureness}
              onChange={setSureness}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
