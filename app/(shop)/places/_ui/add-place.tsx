'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { type PlaceChoice, PlaceFields } from '@/app/(shop)/places/_ui/place-fields';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { addPlaceAction } from '@/app/(shop)/places/actions';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** Adds a place. Stays open for the next one, since places come in rows: shelf 1, shelf 2, shelf 3. */
export function AddPlace({ choices, parentLabel = '' }: { choices: readonly PlaceChoice[]; parentLabel?: string }) {
  const { run, pending, problem } = useAct(addPlaceAction);
  const [values, setValues] = useState({ name: '', kind: parentLabel ? 'shelf' : 'room', parentLabel });
  const [added, setAdded] = useState<{ label: string; name: string }[]>([]);

  const add = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run({ ...values, parentLabel: values.parentLabel || undefined });
    if (!answer.ok) return;
    setAdded((before) => [...before, answer.answer]);
    setValues((before) => ({ ...before, name: '' }));
  };

  return (
    <form onSubmit={add} noValidate className={styles.form}>
      <PlaceFields values={values} onChange={setValues} choices={choices} problem={problem} />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" variant="main" pending={pending} pendingWords="Writing into the book">
        {values.name.trim() ? `Add ${values.name.trim()}` : 'Add the place'}
      </Key>
      <div role="status" className={styles.added}>
        {added.length > 0 ? (
          <p>
            {added
              .map(({ label, name }) => `${name} is in the book, label ${printOwnLabel(label as OwnLabelCode)}.`)
              .join(' ')}
          </p>
        ) : null}
      </div>
      {added.length > 0 ? (
        <LinkKey href={`/labels?codes=${added.map(({ label }) => label).join(',')}`} variant="ghost">
          {added.length === 1 ? 'Print its label' : 'Print their labels'}
        </LinkKey>
      ) : null}
    </form>
  );
}
