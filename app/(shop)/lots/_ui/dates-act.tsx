'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { lotDatesAction } from '@/app/(shop)/lots/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';

/** The three dates as they would be typed; an empty one is not printed. */
export type TypedDates = { madeOn: string; bestBefore: string; useBy: string };

export interface DatesActProps {
  lotId: number;
  dates: TypedDates;
  /** A date was read by a camera or a code and no person has looked at it yet. */
  unconfirmed: boolean;
  today: CalendarDate;
  order: DateOrder;
}

/** Confirms the dates of a lot, or corrects them. Every container of the lot follows. */
export function DatesAct({ lotId, dates, unconfirmed, today, order }: DatesActProps) {
  const [typed, setTyped] = useState({ ...dates, why: '' });
  const set = (field: keyof typeof typed) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const changed = (['madeOn', 'bestBefore', 'useBy'] as const).some((field) => typed[field] !== dates[field]);
  const field = (name: keyof TypedDates, label: string, error: string | undefined) => (
    <DateTextField
      label={label}
      hint={
        name === 'madeOn' ? 'As the label has it; a month alone is enough. Leave empty what is not printed.' : undefined
      }
      optional
      today={today}
      order={order}
      value={typed[name]}
      onChange={set(name)}
      error={error}
    />
  );
  return (
    <div id="dates">
      <Fold
        group="act"
        open={unconfirmed}
        title={unconfirmed ? 'Confirm its dates' : 'Correct its dates'}
        now={unconfirmed ? 'read, not yet confirmed' : undefined}
      >
        <ActForm
          action={lotDatesAction}
          input={{ lotId, ...typed }}
          words={changed || !unconfirmed ? 'Write the dates' : 'They are as printed'}
          done="The dates of the lot are in the book."
          onDone={() => set('why')('')}
        >
          {(errors) => (
            <>
              {field('madeOn', 'Made on', errors.madeOn)}
              {field('bestBefore', 'Best before', errors.bestBefore)}
              {field('useBy', 'Use by', errors.useBy)}
              <TextField
                label="Why"
                hint="What was read wrong, or where the right date stands."
                optional
                value={typed.why}
                onChange={set('why')}
                maxLength={500}
                error={errors.why}
              />
            </>
          )}
        </ActForm>
      </Fold>
    </div>
  );
}
