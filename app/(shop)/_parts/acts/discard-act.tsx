'use client';

import { useState } from 'react';
import type { Discarded } from '@/app/_server/stock/discard';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { discardAction } from '@/app/(shop)/_parts/acts/actions';
import { DayItWas } from '@/app/(shop)/_parts/acts/day-it-was';
import { sayBroken } from '@/app/(shop)/_parts/acts/say-broken';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';

/** Takes a thing off the shelf for good. `care` says what to mind when it is thrown away. */
export function DiscardAct({
  label,
  what,
  care,
  today,
  order,
}: {
  label: string;
  what: string;
  care?: string;
  today: CalendarDate;
  order: DateOrder;
}) {
  const [why, setWhy] = useState('');
  const [happenedOn, setHappenedOn] = useState<string>();
  return (
    <Fold group="act" title="Throw it away">
      <ActForm<Discarded>
        action={discardAction}
        input={{ label, why, happenedOn }}
        words={`Write off ${what}`}
        variant="stop"
        done={({ broken }) => `Written off. Reverse it in the history if that was a mistake.${sayBroken(broken)}`}
        onDone={() => {
          setWhy('');
          setHappenedOn(undefined);
        }}
      >
        {(errors) => (
          <>
            {care ? <p>{care}</p> : null}
            <WhyField
              hint="Spoilt, spilt, given away, lost: a few words."
              value={why}
              onChange={setWhy}
              error={errors.why}
            />
            <DayItWas
              label="The day it went"
              today={today}
              order={order}
              value={happenedOn}
              onChange={setHappenedOn}
              error={errors.happenedOn}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
