'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { SelectField } from '@/app/_ui/field/select-field';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { beginAction } from '@/app/(shop)/stocktake/actions';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** Chooses the place to walk, from the list or by scanning its label. */
export function BeginWalk({
  choices,
  placeLabel,
}: {
  choices: readonly { label: string; says: string }[];
  /** Chosen already, where the reader came from that place. */
  placeLabel: string;
}) {
  const router = useRouter();
  const [place, setPlace] = useState(placeLabel);
  const [refused, setRefused] = useState('');
  const { run, pending, problem, forget } = useAct(beginAction);
  const choose = (label: string) => {
    setPlace(label);
    setRefused('');
    forget();
  };
  useScanHandler(({ text }) => {
    const label = parseOwnLabel(text);
    const known = label.ok && choices.some((one) => one.label === label.value.code);
    giveFeedback(known ? 'read' : 'error');
    if (label.ok && known) choose(label.value.code);
    else setRefused('That is no place of this book. Scan the label of the place, or choose it here.');
  });
  const begin = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run({ placeLabel: place });
    if (answer.ok) router.push(`/stocktake/${answer.answer.stocktake}`);
  };
  const name = choices.find((one) => one.label === place)?.says.split(', ')[0];

  return (
    <form className={styles.form} noValidate onSubmit={begin}>
      <SelectField
        label="The place to walk"
        hint="With every place inside it. A hand scanner can choose it by its label."
        none="Choose a place"
        options={choices.map(({ label, says }) => ({ value: label, label: says }))}
        value={place}
        onChange={choose}
        error={refused || problem?.fields?.placeLabel}
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" pending={pending} pendingWords="Writing into the book">
        {name ? `Begin in ${name}` : 'Begin the stocktake'}
      </Key>
    </form>
  );
}
