'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useEffect, useRef, useState, useTransition } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type {
  MakeKind,
  QuestionField,
  QuestionProblems,
  ShapeKind,
  TypedQuestion,
} from '@/app/(shop)/on-hand/fits/typed-question';
import type { BestBy } from '@/shared/fit/score-place';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

const SHAPES: readonly { value: ShapeKind; label: string }[] = [
  { value: 'rectangle', label: 'Rectangle' },
  { value: 'round', label: 'Round' },
  { value: 'oval', label: 'Oval' },
  { value: 'superellipse', label: 'Superellipse' },
];

const MAKES: readonly { value: MakeKind; label: string }[] = [
  { value: 'one', label: 'One piece' },
  { value: 'pair', label: 'Bookmatched pair' },
  { value: 'river', label: 'Two, a river between' },
];

const BESTS: readonly { value: BestBy; label: string }[] = [
  { value: 'balanced', label: 'A bit of each' },
  { value: 'waste', label: 'Least waste' },
  { value: 'offcut', label: 'Biggest offcut' },
  { value: 'figure', label: 'Figure in the middle' },
];

interface FitFormProps {
  first: TypedQuestion;
  problems: QuestionProblems;
  prefer: UnitSystem;
  species: readonly string[];
  /** The job it is asked for, carried on with the question. */
  jobId: number | undefined;
}

/** The top that is asked for. The address keeps what is typed, so an answer can be sent on or come back to. */
export function FitForm({ first, problems: found, prefer, species, jobId }: FitFormProps) {
  const router = useRouter();
  const [pending, start] = useTransition();
  const [typed, setTyped] = useState(first);
  const [problems, setProblems] = useState(found);
  const set = (field: QuestionField) => (text: string) => {
    setTyped((now) => ({ ...now, [field]: text }));
    setProblems(({ [field]: _, ...others }) => others);
  };
  const round = typed.shape === 'round';
  const form = useRef<HTMLFormElement>(null);
  const refused = Object.keys(found).length;
  // A refusal is a new page with the old words in it: the first thing to put right is where to go on.
  useEffect(() => setProblems(found), [found]);
  useEffect(() => {
    if (refused > 0) form.current?.querySelector<HTMLInputElement>('input[data-error]')?.focus();
  }, [refused]);

  function ask(submit: FormEvent<HTMLFormElement>) {
    submit.preventDefault();
    const params = new URLSearchParams();
    for (const [name, value] of new FormData(submit.currentTarget)) params.append(name, String(value));
    start(() => router.push(`/on-hand/fits?${params}`));
  }

  const length = (field: QuestionField) => ({
    name: field,
    value: typed[field],
    onChange: set(field),
    maxLength: 40,
    ...(problems[field] !== undefined && { error: problems[field] }),
    read: (text: string) => echo(text, prefer, field === 'thick' ? 'thickness' : 'length'),
  });
  const number = (field: QuestionField) => ({
    name: field,
    value: typed[field],
    onChange: set(field),
    inputMode: 'decimal' as const,
    maxLength: 8,
    ...(problems[field] !== undefined && { error: problems[field] }),
  });
  const usual = typed.mc.trim() === '' ? 'any moisture' : `${typed.mc.trim()} % or less`;

  return (
    <form ref={form} action="/on-hand/fits" method="get" onSubmit={ask} noValidate className={styles.form}>
      {jobId === undefined ? null : <input type="hidden" name="job" value={jobId} />}
      <ChoiceChips
        name="shape"
        label="Shape"
        options={SHAPES}
        value={typed.shape}
        onChange={(shape) => setTyped((now) => ({ ...now, shape: shape as ShapeKind }))}
      />
      <ChoiceChips
        name="make"
        label="Made of"
        options={MAKES}
        value={typed.make}
        onChange={(make) => setTyped((now) => ({ ...now, make: make as MakeKind }))}
      />
      <p className={styles.finished}>All as finished{round ? '' : ', length along the grain'}.</p>
      <div className={styles.pair}>
        <QuantityField {...length('l')} label={round ? 'Diameter' : 'Length'} />
        {round ? null : <QuantityField {...length('w')} label="Width" />}
        {typed.shape === 'rectangle' ? <QuantityField {...length('r')} label="Corner radius" optional /> : null}
        {typed.shape === 'superellipse' ? (
          <TextField {...number('n')} label="Exponent" hint="2 is an oval, 2.5 a soft rectangle, 4 squarer." />
        ) : null}
        <QuantityField {...length('thick')} label="Thickness" optional={typed.make !== 'river'} />
        {typed.make === 'river' ? (
          <>
            <QuantityField {...length('gap')} label="River, at the narrowest" />
            <QuantityField {...length('back')} label="Wood at each back" hint="At least, along the whole length." />
          </>
        ) : null}
      </div>
      <Fold
        title="How dry, which wood"
        now={[
          usual,
          typed.by.trim() === '' ? '' : `by ${typed.by.trim()}`,
          typed.species || 'any species',
          typed.free ? 'free only' : '',
        ]
          .filter(Boolean)
          .join(', ')}
        open={problems.mc !== undefined || problems.by !== undefined || problems.weight !== undefined}
      >
        <div className={styles.pair}>
          <TextField
            {...number('mc')}
            label="Moisture at most, %"
            hint="By the wettest of its newest readings."
            optional
          />
          <TextField
            label="Dry by"
            hint="A day: then its own readings and the air of its room say whether it will be."
            optional
            name="by"
            value={typed.by}
            onChange={set('by')}
            maxLength={40}
            error={problems.by}
          />
          <TextField
            label="Weighs at most"
            hint="The finished top, with its unit."
            optional
            name="weight"
            value={typed.weight}
            onChange={set('weight')}
            maxLength={40}
            error={problems.weight}
          />
          <SelectField
            name="species"
            label="Species"
            none="Any species"
            options={species.map((each) => ({ value: each, label: each }))}
            value={typed.species}
            onChange={(next) => setTyped((now) => ({ ...now, species: next }))}
          />
        </div>
        <label className={styles.tick}>
          <input
            type="checkbox"
            name="heart"
            value="yes"
            checked={typed.heart}
            onChange={(flip) => {
              const heart = flip.currentTarget.checked;
              setTyped((now) => ({ ...now, heart }));
            }}
          />
          Heartwood only, by the sapwood that was measured
        </label>
        <label className={styles.tick}>
          <input
            type="checkbox"
            name="free"
            value="yes"
            checked={typed.free}
            onChange={(flip) => {
              const free = flip.currentTarget.checked;
              setTyped((now) => ({ ...now, free }));
            }}
          />
          Only what is free: not promised, not held
        </label>
      </Fold>
      <Fold
        title="Defects, allowances and the best place"
        now={`edges ${shown(typed.edge, prefer)}, ends ${shown(typed.trim, prefer)}, grain ±${typed.grain.trim() || '?'}°`}
        open={problems.edge !== undefined || problems.trim !== undefined || problems.grain !== undefined}
      >
        <div className={styles.pair}>
          <QuantityField
            {...length('edge')}
            label="Lost at each edge"
            hint="Bark, sapwood you do not want, the saw line."
          />
          <QuantityField {...length('trim')} label="Cut off each end" hint="Where wood checks first." />
          <TextField
            {...number('grain')}
            label="Grain off the length, degrees"
            hint="How far the top may be turned on the piece, either way."
          />
        </div>
        <label className={styles.tick}>
          <input
            type="checkbox"
            name="fill"
            value="yes"
            checked={typed.fill}
            onChange={(flip) => {
              const fill = flip.currentTarget.checked;
              setTyped((now) => ({ ...now, fill }));
            }}
          />
          What is marked to be filled may be in the top
        </label>
        <ChoiceChips
          name="best"
          label="Best is"
          options={BESTS}
          value={typed.best}
          onChange={(best) => setTyped((now) => ({ ...now, best: best as BestBy }))}
        />
      </Fold>
      {Object.keys(problems).length > 0 ? (
        <PlainError
          happened="This cannot be asked yet."
          kept="What you typed is still here."
          toDo="Put right what is marked, then look again."
        />
      ) : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Looking at every piece">
          See what fits
        </Key>
      </KeyBar>
    </form>
  );
}

function echo(text: string, prefer: UnitSystem, mode: 'length' | 'thickness'): Echo {
  const read = parseLength(text, { prefer, mode });
  if (!read.ok) return { ok: false, says: sayLengthError(read.error, { prefer }) };
  const other = prefer === 'metric' ? 'imperial' : 'metric';
  return {
    ok: true,
    says: `${printLength(read.value, { prefer, denominator: 64 })}, that is ${printLength(read.value, { prefer: other })}.`,
  };
}

/** A length as it reads, or as it is typed where it does not. */
function shown(text: string, prefer: UnitSystem): string {
  const read = parseLength(text.trim() || '0', { prefer });
  return read.ok ? printLength(read.value, { prefer, style: 'inches' }) : text;
}
