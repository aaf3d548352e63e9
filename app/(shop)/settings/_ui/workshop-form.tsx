'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { TimeZoneField } from '@/app/_ui/field/time-zone-field';
import { UNIT_CHOICES } from '@/app/_ui/field/unit-choices';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { changeSettingsAction } from '@/app/(shop)/settings/actions';

export interface WorkshopValues {
  name: string;
  timeZone: string;
  units: string;
  dateOrder: string;
}

const ORDERS = [
  { value: 'day-first', label: 'Day first', hint: '3/4 is 3 April' },
  { value: 'month-first', label: 'Month first', hint: '3/4 is 4 March' },
] as const;

/** What holds for the whole workshop. */
export function WorkshopForm({ now }: { now: WorkshopValues }) {
  const { run, pending, problem } = useAct(changeSettingsAction);
  const [values, setValues] = useState(now);
  const errors = useFieldErrors(problem, { ...values });
  const notice = useNotice();
  const set = (change: Partial<WorkshopValues>) => setValues((before) => ({ ...before, ...change }));
  const same = JSON.stringify({ ...values, name: values.name.trim() }) === JSON.stringify(now);

  const change = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run(values);
    if (answer.ok) notice({ words: 'The settings are changed, for every device.' });
  };

  return (
    <form onSubmit={change} noValidate className={styles.form}>
      <TextField
        label="The workshop’s name"
        value={values.name}
        onChange={(name) => set({ name })}
        error={errors.name}
        maxLength={80}
        autoComplete="organization"
      />
      <TimeZoneField value={values.timeZone} onChange={(timeZone) => set({ timeZone })} error={errors.timeZone} />
      <ChoiceChips
        label="Units"
        hint="What you read and type. The other system is understood too, with its unit. What is in the book stays exact."
        options={UNIT_CHOICES}
        value={values.units}
        onChange={(units) => set({ units })}
        error={errors.units}
      />
      <ChoiceChips
        label="Dates typed in numbers"
        hint="Where a date could be read both ways, you are asked."
        options={ORDERS}
        value={values.dateOrder}
        onChange={(dateOrder) => set({ dateOrder })}
        error={errors.dateOrder}
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" pending={pending} pendingWords="Writing into the book" disabled={same}>
        {same ? 'Nothing is changed yet' : 'Change it for every device'}
      </Key>
    </form>
  );
}
