'use client';

import Link from 'next/link';
import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { noteTemperatureAction } from '@/app/(shop)/places/actions';
import { sayTemperatureError } from '@/app/(shop)/places/say-temperature-error';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How cold and how warm a place has been. Marks what stands in it and is not meant for that. */
export function NoteTemperature({ label, prefer }: { label: string; prefer: UnitSystem }) {
  const { run, pending, problem } = useAct(noteTemperatureAction);
  const [least, setLeast] = useState('');
  const [most, setMost] = useState('');
  const [marked, setMarked] = useState<{ labels: string[]; said: string; froze: boolean }>();

  const read = (text: string): Echo => {
    const reading = parseTemperature(text, { prefer });
    if (!reading.ok) return { ok: false, says: sayTemperatureError(reading.error, prefer) };
    const other = prefer === 'metric' ? 'imperial' : 'metric';
    return {
      ok: true,
      says: `Reads as ${printTemperature(reading.value, { prefer })}, that is ${printTemperature(reading.value, { prefer: other })}.`,
    };
  };

  const note = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    setMarked(undefined);
    const answer = await run({ label, least, most, prefer });
    if (!answer.ok) return;
    const readings = [least, most].map((text) => parseTemperature(text, { prefer }));
    const said = readings.flatMap((each) => (each.ok ? printTemperature(each.value, { prefer }) : [])).join(' to ');
    const froze = readings[0]?.ok === true && readings[0].value < 0;
    setMarked({ labels: answer.answer.marked, said, froze });
    setLeast('');
    setMost('');
  };

  return (
    <form onSubmit={note} noValidate className={styles.form}>
      <QuantityField
        label="Coldest seen"
        hint="As the thermometer’s memory shows it."
        value={least}
        onChange={setLeast}
        read={read}
        error={problem?.fields?.least}
        maxLength={40}
      />
      <QuantityField
        label="Warmest seen"
        value={most}
        onChange={setMost}
        read={read}
        error={problem?.fields?.most ?? problem?.fields?.mostTenthsC}
        maxLength={40}
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" variant="ghost" pending={pending} pendingWords="Writing into the book">
        Note the temperatures
      </Key>
      <div role="status" className={styles.added}>
        {marked ? (
          <>
            <p>
              {marked.said} is in the book.{' '}
              {marked.labels.length === 0
                ? 'Nothing that stands here was newly marked.'
                : `${marked.labels.length} of what stands here and inside was kept outside its own limits, and is marked:`}
            </p>
            {marked.labels.length > 0 ? (
              <ul className={styles.marked}>
                {marked.labels.map((each) => (
                  <li key={each}>
                    <Link href={`/containers/${each}`}>{printOwnLabel(each as OwnLabelCode)}</Link>
                  </li>
                ))}
              </ul>
            ) : null}
            {marked.froze ? (
              <p>
                It was below freezing. Look into what holds water, and note on its own page what froze: only you can see
                that.
              </p>
            ) : null}
          </>
        ) : null}
      </div>
    </form>
  );
}
