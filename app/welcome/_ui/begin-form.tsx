'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useEffect, useState } from 'react';
import type { SetUpGuess } from '@/app/_server/book/guess-set-up';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { TimeZoneField } from '@/app/_ui/field/time-zone-field';
import { UNIT_CHOICES } from '@/app/_ui/field/unit-choices';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { OpenBookKey } from '@/app/welcome/_ui/open-book-key';
import { beginBookAction } from '@/app/welcome/actions';

interface BeginFormProps {
  guess: SetUpGuess;
  currencies: readonly { value: string; label: string }[];
}

/** The four questions a new book asks. */
export function BeginForm({ guess, currencies }: BeginFormProps) {
  const router = useRouter();
  const { run, pending, problem } = useAct(beginBookAction);
  const [opening, setOpening] = useState(false);
  const [name, setName] = useState('');
  const [timeZone, setTimeZone] = useState('');
  const [units, setUnits] = useState<string>(guess.units);
  const [currency, setCurrency] = useState(guess.currency);
  const errors = useFieldErrors(problem, { name, timeZone, units, currency });
  // Only the browser knows its own zone.
  useEffect(() => setTimeZone((before) => before || Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'), []);

  const begin = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending || opening) return;
    const answer = await run({ name, timeZone, units, currency });
    if (!answer.ok) return;
    setOpening(true);
    router.replace('/arrive');
  };

  return (
    <form onSubmit={begin} noValidate>
      <TextField
        label="The workshop’s name"
        value={name}
        onChange={setName}
        error={errors.name}
        maxLength={80}
        autoComplete="organization"
        autoCapitalize="words"
      />
      <TimeZoneField value={timeZone} onChange={setTimeZone} error={errors.timeZone} />
      <ChoiceChips
        label="Units"
        hint="What you read and type. The other system is understood too, with its unit."
        options={UNIT_CHOICES}
        value={units}
        onChange={setUnits}
        error={errors.units}
      />
      <SelectField
        label="Currency"
        hint="What material is paid for in. It stays: costs are kept in it."
        options={currencies}
        value={currency}
        onChange={setCurrency}
        error={errors.currency}
      />
      {problem ? (
        <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo}>
          {problem.code === 'book-already-there' ? <OpenBookKey /> : null}
        </PlainError>
      ) : null}
      <Key type="submit" pending={pending || opening} pendingWords={opening ? 'Opening it' : 'Beginning the book'}>
        {name.trim() ? `Begin the book of ${name.trim()}` : 'Begin the book'}
      </Key>
    </form>
  );
}
