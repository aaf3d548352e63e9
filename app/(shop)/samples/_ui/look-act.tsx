'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { goneAction, lookAction } from '@/app/(shop)/samples/actions';
import { LOOKS } from '@/app/(shop)/samples/look-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';

export interface LookActProps {
  sampleId: number;
  name: string;
  madeOn: CalendarDate;
  today: CalendarDate;
  order: DateOrder;
  /** A photo hangs on the lot, where one is known. */
  hasPhoto: boolean;
}

/** The days after which a sample is usually looked at: the next one from how old it is now. */
function nextDays(age: number): string {
  if (age < 60) return String(Math.max(1, 90 - age));
  return String(age < 300 ? Math.max(1, 365 - age) : 365);
}

/** Writes what a sample looks like now, or that it is gone. */
export function LookAct({ sampleId, name, madeOn, today, order, hasPhoto }: LookActProps) {
  const fresh = {
    lookedOn: sayDate(today, { order }),
    result: '',
    note: '',
    days: nextDays(daysBetween(madeOn, today)),
  };
  const [typed, setTyped] = useState(fresh);
  const [photo, setPhoto] = useState<File>();
  const [why, setWhy] = useState('');
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  return (
    <>
      <Fold title={`Look at ${name}`}>
        <ActForm
          action={lookAction}
          input={{ ...typed, sampleId, result: typed.result || undefined, photo }}
          words="Write what it is like"
          done={({ result }) => `${name}: ${LOOKS[result].toLowerCase()}, in the book.`}
        >
          {(errors) => (
            <>
              <ChoiceChips
                label="What is it like?"
                options={Object.entries(LOOKS).map(([value, label]) => ({ value, label }))}
                value={typed.result}
                onChange={set('result')}
                error={errors.result}
              />
              <DateTextField
                label="Looked at on"
                today={today}
                order={order}
                aim="past"
                value={typed.lookedOn}
                onChange={set('lookedOn')}
                error={errors.lookedOn}
              />
              <TextField
                label="Look again after so many days"
                optional
                value={typed.days}
                onChange={set('days')}
                maxLength={10}
                error={errors.days ?? errors.nextOn}
              />
              <TextField
                label="Note"
                optional
                lines={2}
                value={typed.note}
                onChange={set('note')}
                maxLength={500}
                error={errors.note}
              />
              {hasPhoto ? <PictureField label="Photo" optional onChange={setPhoto} error={errors.photo} /> : null}
            </>
          )}
        </ActForm>
      </Fold>
      <Fold title={`${name} is gone`}>
        <ActForm
          action={goneAction}
          input={{ sampleId, why }}
          words="Write that it is gone"
          variant="stop"
          done={`${name} is off the shelf in the book.`}
        >
          {(errors) => <WhyField label="Why" value={why} onChange={setWhy} error={errors.why} />}
        </ActForm>
      </Fold>
    </>
  );
}
