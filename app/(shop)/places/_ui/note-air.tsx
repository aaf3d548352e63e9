'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { AirFields } from '@/app/(shop)/places/_ui/air-fields';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { noteAirAction } from '@/app/(shop)/places/actions';
import { readTypedAir } from '@/app/(shop)/places/read-typed-air';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface NoteAirProps {
  label: string;
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
}

/** Writes down what the thermometer and the hygrometer show. Two numbers; the day is today unless another is typed. */
export function NoteAir({ label, prefer, today, order }: NoteAirProps) {
  const { run, pending, problem } = useAct(noteAirAction);
  const notice = useNotice();
  const fresh = { temperature: '', humidity: '' };
  const [typed, setTyped] = useState(fresh);
  const [takenOn, setTakenOn] = useState(sayDate(today, { order }));
  const { air } = readTypedAir(typed, prefer);

  const write = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const answer = await run({ label, takenOn, ...typed });
    if (!answer.ok) return;
    setTyped(fresh);
    setTakenOn(sayDate(today, { order }));
    notice({ words: 'The air is in the book.' });
  };

  return (
    <form onSubmit={write} noValidate className={styles.form}>
      <AirFields typed={typed} onChange={setTyped} prefer={prefer} problem={problem} />
      <DateTextField
        label="Read on"
        hint="A day that is noted again is put right: the later note counts."
        today={today}
        order={order}
        aim="past"
        value={takenOn}
        onChange={setTakenOn}
        error={problem?.fields?.takenOn}
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key type="submit" pending={pending} pendingWords="Writing into the book">
        {air ? `Write ${typed.temperature.trim()} and ${air.humidityTenths / 10} %` : 'Write the air'}
      </Key>
    </form>
  );
}
