'use client';

import { type FormEvent, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { AirFields } from '@/app/(shop)/places/_ui/air-fields';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { removeSeasonAction, setSeasonAction } from '@/app/(shop)/places/actions';
import { longMonth } from '@/shared/calendar/month-names';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface SaidSeason {
  id: number;
  name: string;
  /** "from October on, 20 °C at 35 %: wood settles at 6.9 %" */
  says: string;
}

const MONTHS = Array.from({ length: 12 }, (_, at) => ({ value: String(at + 1), label: longMonth(at + 1) }));

/** The usual air of a room over the year, where nobody keeps a log: from a month on, until the next season begins. */
export function Seasons({
  label,
  prefer,
  seasons,
}: {
  label: string;
  prefer: UnitSystem;
  seasons: readonly SaidSeason[];
}) {
  const set = useAct(setSeasonAction);
  const remove = useAct(removeSeasonAction);
  const notice = useNotice();
  const fresh = { name: '', fromMonth: '', temperature: '', humidity: '' };
  const [typed, setTyped] = useState(fresh);

  const write = async (submit: FormEvent) => {
    submit.preventDefault();
    if (set.pending) return;
    const answer = await set.run({ label, ...typed });
    if (!answer.ok) return;
    notice({ words: `${typed.name.trim()} is in the book.` });
    setTyped(fresh);
  };
  const takeOff = async ({ id, name }: SaidSeason) => {
    if (remove.pending) return;
    const answer = await remove.run({ label, seasonId: id });
    if (answer.ok) notice({ words: `${name} is taken off. The history keeps it.` });
  };

  return (
    <div className={styles.form}>
      {seasons.length > 0 ? (
        <ul className={styles.seasons} aria-label="Seasons">
          {seasons.map((season) => (
            <li key={season.id}>
              <span>
                <b>{season.name}</b>, {season.says}
              </span>
              <Key
                variant="ghost"
                pending={remove.pending}
                onClick={() => takeOff(season)}
                aria-label={`Take off ${season.name}`}
              >
                Take off
              </Key>
            </li>
          ))}
        </ul>
      ) : null}
      {remove.problem ? (
        <PlainError happened={remove.problem.what} kept={remove.problem.kept} toDo={remove.problem.todo} />
      ) : null}
      <form onSubmit={write} noValidate className={styles.form}>
        <TextField
          label="Season"
          hint="As you call it: Heating, Summer."
          value={typed.name}
          onChange={(name) => setTyped({ ...typed, name })}
          error={set.problem?.fields?.name}
          maxLength={60}
          autoCapitalize="sentences"
        />
        <SelectField
          label="Begins in"
          none="Choose a month"
          options={MONTHS}
          value={typed.fromMonth}
          onChange={(fromMonth) => setTyped({ ...typed, fromMonth })}
          error={set.problem?.fields?.fromMonth}
        />
        <AirFields
          typed={typed}
          onChange={(air) => setTyped({ ...typed, ...air })}
          prefer={prefer}
          problem={set.problem}
        />
        {set.problem ? (
          <PlainError happened={set.problem.what} kept={set.problem.kept} toDo={set.problem.todo} />
        ) : null}
        <Key type="submit" variant="ghost" pending={set.pending} pendingWords="Writing into the book">
          {typed.name.trim() ? `Keep ${typed.name.trim()}` : 'Keep the season'}
        </Key>
      </form>
    </div>
  );
}
