'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { changeHouseAction } from '@/app/(shop)/settings/actions';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface HouseValues {
  houseLengthNm: string;
  houseWidthNm: string;
  kerfNm: string;
}

/** What this workshop calls too small to keep, and what its saw takes. */
export function HouseForm({ now, prefer }: { now: HouseValues; prefer: UnitSystem }) {
  const { run, pending, problem } = useAct(changeHouseAction);
  const [values, setValues] = useState(now);
  const errors = useFieldErrors(problem, { ...values });
  const notice = useNotice();
  const field = (name: keyof HouseValues) => ({
    prefer,
    value: values[name],
    onChange: (text: string) => setValues((before) => ({ ...before, [name]: text })),
    error: errors[name],
  });
  const same = JSON.stringify(values) === JSON.stringify(now);

  const change = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run(values);
    if (answer.ok) notice({ words: 'Cuts begin with these from now on.' });
  };

  return (
    <form onSubmit={change} noValidate className={styles.form}>
      <LengthField
        label="Shortest offcut to keep"
        hint="What a cut leaves shorter or narrower than this is offered as scrap. You choose each time."
        {...field('houseLengthNm')}
      />
      <LengthField label="Narrowest offcut to keep" {...field('houseWidthNm')} />
      <LengthField label="Kerf" hint="What your saw takes. Every cut can say otherwise." {...field('kerfNm')} />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" pending={pending} pendingWords="Writing into the book" disabled={same}>
        {same ? 'No size is changed yet' : 'Change these sizes'}
      </Key>
    </form>
  );
}
