'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { addPlaceHere } from '../actions';

export type PlaceOption = { label: string; name: string; inside: string | null };

const OTHER = '+';

/** Where it goes: one of the places, or a new one in one field. */
export function PlaceChoice({
  places,
  value,
  kind,
  onChange,
  onAdded,
  error,
}: {
  places: readonly PlaceOption[];
  value: string;
  /** What a place added here is. */
  kind: 'rack' | 'shelf';
  onChange: (label: string) => void;
  onAdded: (place: PlaceOption) => void;
  error?: string;
}) {
  const [isAdding, setAdding] = useState(places.length === 0);
  const [name, setName] = useState('');
  const { run, pending, problem } = useAct(addPlaceHere);

  async function add() {
    const answer = await run({ name, kind });
    if (!answer.ok) return;
    const { label, name: given } = answer.answer;
    onAdded({ label, name: given, inside: null });
    setName('');
    setAdding(false);
  }

  return (
    <>
      {places.length > 0 ? (
        <SelectField
          label="Where it goes"
          hint="Or scan the label of the place."
          none="No place yet"
          options={[
            ...places.map((place) => ({
              value: place.label,
              label: place.inside ? `${place.name}, ${place.inside}` : place.name,
            })),
            { value: OTHER, label: 'A new place…' },
          ]}
          value={isAdding ? OTHER : value}
          onChange={(next) => {
            setAdding(next === OTHER);
            if (next !== OTHER) onChange(next);
          }}
          error={error}
        />
      ) : null}
      {isAdding ? (
        <>
          <TextField
            label={places.length === 0 ? 'Where it goes: name the first place' : 'Name the new place'}
            hint="As you call it: cabinet 2, rack by the door."
            optional
            value={name}
            onChange={setName}
            error={problem?.fields?.name}
            enterKeyHint="done"
            onEnter={() => name.trim() && add()}
          />
          {name.trim() ? (
            <Key variant="ghost" onClick={add} pending={pending} pendingWords="Adding the place…">
              Add the place {name.trim()}
            </Key>
          ) : null}
          {problem && !problem.fields ? (
            <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} />
          ) : null}
        </>
      ) : null}
    </>
  );
}
