'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { readingAction } from '@/app/(shop)/pieces/actions';
import { METER_KIND_WORDS, meterKindOf, meterWords } from '@/app/(shop)/pieces/meter-kind';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { METER_KINDS } from '@/shared/wood/moisture-reading';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

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
  const fresh = { moisture: '', takenOn: sayDate(today, { order }), meter, spot: '' };
  const [typed, setTyped] = useState(fresh);
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const read = readMoisture(typed.moisture);
  return (
    <Fold group="act" title="Read its moisture" now={now}>
      <ActForm
        action={readingAction}
        input={{ label, ...typed }}
        words={read.ok ? `Write ${read.value / 10} %` : 'Write the reading'}
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
              echo={read.ok || typed.moisture.trim() === '' ? null : { ok: false, says: sayMoistureError(read.error) }}
              error={errors.moisture ?? errors.mcTenths}
            />
            <TextField
              label="Where on it"
              hint="For example: mid-face, 300 mm from the end, 20 mm deep. Ends dry first and mislead."
              optional
              value={typed.spot}
              onChange={set('spot')}
              maxLength={120}
              error={errors.spot}
            />
            <ChoiceChips
              label="Kind of meter"
              optional
              options={METER_KINDS.map((value) => ({ value, label: METER_KIND_WORDS[value] }))}
              value={meterKindOf(typed.meter)}
              onChange={(value) =>
                set('meter')(meterWords(METER_KINDS.find((kind) => kind === value) ?? 'unknown', typed.meter))
              }
            />
            <TextField
              label="Meter"
              hint="Its name and how it was set: “pin meter, set to oak”. The kind is read from these words."
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
              aim="past"
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
