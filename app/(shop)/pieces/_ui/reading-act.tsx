'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { readingAction } from '@/app/(shop)/pieces/actions';
import { readMoisture } from '@/app/(shop)/pieces/read-moisture';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export interface ReadingActProps {
  label: string;
  today: CalendarDate;
  order: DateOrder;
  now: string;
  /** The meter used last. */
  meter: string;
}

/** Writes a moisture reading. */
export function ReadingAct({ label, today, order, now, meter }: ReadingActProps) {
  const fresh = { moisture: '', takenOn: sayDate(today), meter, spot: '' };
  const [typed, setTyped] = useState(fresh);
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const tenths = readMoisture(typed.moisture);
  return (
    <Fold group="act" title="Read its moisture" now={now}>
      <ActForm
        action={readingAction}
        input={{ label, ...typed }}
        words={tenths === undefined ? 'Write the reading' : `Write ${tenths / 10} %`}
        done="The reading is in the book."
        onDone={() => setTyped(fresh)}
      >
        {(errors) => (
          <>
            <TextField
              label="Moisture, %"
              hint="As the meter shows it, set to this wood. Mid-length, away from ends and knots; the wettest place counts."
              inputMode="decimal"
              value={typed.moisture}
              onChange={set('moisture')}
              maxLength={10}
              error={errors.moisture ?? errors.mcTenths}
            />
            <TextField
              label="Where on it"
              optional
              value={typed.spot}
              onChange={set('spot')}
              maxLength={120}
              error={errors.spot}
            />
            <TextField
              label="Meter"
              optional
              value={typed.meter}
              onChange={set('meter')}
              maxLength={80}
              error={errors.meter}
            />
            <DateTextField
              label="Read on"
              today={today}
              order={order}
              value={typed.takenOn}
              onChange={set('takenOn')}
              error={errors.takenOn}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
