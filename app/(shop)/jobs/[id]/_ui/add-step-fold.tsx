'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { type PartChoice, PartField } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import { addStepAction } from '@/app/(shop)/jobs/[id]/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { STEP_WORDS } from '@/shared/timeline/say-step';
import { STEP_KINDS, type StepKind } from '@/shared/timeline/step';

const KINDS = STEP_KINDS.map((value) => ({ value, label: STEP_WORDS[value] }));

/** Adds a step by hand. */
export function AddStepFold({
  jobId,
  parts,
  today,
  order,
}: {
  jobId: number;
  parts: readonly PartChoice[];
  today: CalendarDate;
  order: DateOrder;
}) {
  const [partId, setPartId] = useState<number | null>(null);
  const [kind, setKind] = useState<StepKind>('flatten');
  const [name, setName] = useState('');
  const [text, setText] = useState('');
  const read = readTypedDate(text, { today, order, aim: 'ahead' });
  const day = read.ok && !read.value.ambiguous && read.value.precision === 'day' ? read.value.date : '';
  const called = name.trim() || STEP_WORDS[kind];
  return (
    <Fold title="Add a step" group="step">
      <ActForm
        action={addStepAction}
        input={{ jobId, kind, name, day, note: '', partId }}
        words={`Plan ${called.toLowerCase() === called ? called : called.charAt(0).toLowerCase() + called.slice(1)}`}
        done={`${called} is on the time line.`}
        onDone={() => {
          setName('');
          setText('');
        }}
      >
        {(errors) => (
          <>
            <SelectField
              label="What is done"
              options={KINDS}
              value={kind}
              onChange={(value) => setKind(STEP_KINDS.find((one) => one === value) ?? 'other')}
              error={errors.kind}
            />
            <TextField
              label="What you call it"
              optional={kind !== 'other'}
              value={name}
              onChange={setName}
              maxLength={120}
              error={errors.name}
            />
            {parts.length > 0 ? (
              <PartField
                label="Part it is for"
                hint="The whole job waits for every part."
                parts={parts}
                value={partId}
                onChange={setPartId}
                error={errors.partId}
              />
            ) : null}
            <DateTextField
              label="Day of the step"
              today={today}
              order={order}
              aim="ahead"
              value={text}
              onChange={(next) => setText(next)}
              error={day === '' ? errors.day : undefined}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
