'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { type PlaceChoice, PlaceFields, type PlaceValues } from '@/app/(shop)/places/_ui/place-fields';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { changePlaceAction } from '@/app/(shop)/places/actions';

/** Renames a place or puts it inside another. What stands in it goes with it. */
export function ChangePlace({
  label,
  now,
  choices,
}: {
  label: string;
  now: PlaceValues;
  choices: readonly PlaceChoice[];
}) {
  const { run, pending, problem } = useAct(changePlaceAction);
  const [values, setValues] = useState(now);
  const notice = useNotice();
  const same = values.name.trim() === now.name && values.kind === now.kind && values.parentLabel === now.parentLabel;

  const change = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run({ ...values, label, parentLabel: values.parentLabel || undefined });
    if (answer.ok)
      notice({ words: `${values.name.trim()} is changed. What stands in it stays in it, and its label stays good.` });
  };

  return (
    <form onSubmit={change} noValidate className={styles.form}>
      <PlaceFields values={values} onChange={setValues} choices={choices} problem={problem} />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" variant="ghost" pending={pending} pendingWords="Writing into the book" disabled={same}>
        {same ? 'Nothing is changed yet' : 'Write the change'}
      </Key>
    </form>
  );
}
