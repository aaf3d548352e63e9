'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';
import { treatAction } from '@/app/(shop)/containers/actions';
import { TREATED } from '@/app/(shop)/containers/treatment-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { TREATMENT_KINDS, type TreatmentKind } from '@/shared/shelf-life/conditions-after';

export interface TreatActProps {
  label: string;
  /** Crystals are noted in it now. */
  crystals: boolean;
  today: CalendarDate;
  order: DateOrder;
}

/** Writes what was done to the content, or what it went through, and says what that does to it. */
export function TreatAct({ label, crystals, today, order }: TreatActProps) {
  const fresh = { kind: '', doneOn: sayDate(today, { order }), temperature: '', minutes: '', note: '' };
  const [typed, setTyped] = useState(fresh);
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const kind = TREATMENT_KINDS.find((each) => each === typed.kind);
  return (
    <Fold group="act" title="Write what was done to it" now={crystals ? 'crystals: warm it and stir it' : undefined}>
      <ActForm
        action={treatAction}
        input={{ ...typed, label, kind }}
        words={kind ? `Write: ${TREATED[kind].label.toLowerCase()}` : 'Write it'}
        done={({ cleared }) =>
          cleared.length > 0 ? 'It is in the book, and what was noted is cleared.' : 'It is in the book.'
        }
        onDone={() => setTyped(fresh)}
      >
        {(errors) => (
          <>
            <ChoiceChips
              label="What was it?"
              options={TREATMENT_KINDS.map((value) => ({ value, label: TREATED[value].label }))}
              value={typed.kind}
              onChange={set('kind')}
              error={errors.kind}
            />
            {kind ? <p aria-live="polite">{saidOf(kind, crystals)}</p> : null}
            <DateTextField
              label="On"
              today={today}
              order={order}
              aim="past"
              value={typed.doneOn}
              onChange={set('doneOn')}
              error={errors.doneOn}
            />
            <div className={styles.row}>
              <TextField
                label="Temperature"
                optional
                value={typed.temperature}
                onChange={set('temperature')}
                maxLength={40}
                error={errors.temperature}
              />
              <TextField
                label="Minutes"
                optional
                value={typed.minutes}
                onChange={set('minutes')}
                maxLength={10}
                error={errors.minutes}
              />
            </div>
            <TextField
              label="Note"
              optional
              lines={2}
              value={typed.note}
              onChange={set('note')}
              maxLength={500}
              error={errors.note}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}

function saidOf(kind: TreatmentKind, crystals: boolean): string {
  const { says, withCrystals } = TREATED[kind];
  return crystals && withCrystals ? `${says} ${withCrystals}` : says;
}
