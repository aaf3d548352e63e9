'use client';

import { type ReactNode, useState } from 'react';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { PlainError } from '@/app/_ui/plain-error';
import type { NewPlace } from '@/app/(shop)/arrive/_ui/use-new-place';

export type PlaceOption = { label: string; name: string; inside: string | null };

/** A place of the book, or the name of one that is not in it yet; both empty is no place yet. */
export type Where = { placeLabel: string; newPlace: string };

const OTHER = '+';

/** Where it goes: one of the places, or a new one in one field. The key that books it adds the new one too. */
export function PlaceChoice({
  places,
  where,
  onChange,
  adding,
  error,
  onEnter,
  children,
}: {
  places: readonly PlaceOption[];
  where: Where;
  onChange: (where: Where) => void;
  adding: NewPlace;
  error?: string;
  /** Takes Enter in the name of a new place, where no form takes it. */
  onEnter?: () => void;
  /** What stands under the name of a new place. */
  children?: ReactNode;
}) {
  const [isNaming, setNaming] = useState(false);
  const isNew = where.placeLabel === '' && (isNaming || where.newPlace !== '' || places.length === 0);

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
          value={isNew ? OTHER : where.placeLabel}
          onChange={(next) => {
            setNaming(next === OTHER);
            onChange({ placeLabel: next === OTHER ? '' : next, newPlace: '' });
          }}
          error={error}
        />
      ) : null}
      {isNew ? (
        <>
          <TextField
            label={places.length === 0 ? 'Where it goes: name the first place' : 'Name the new place'}
            hint="As you call it: cabinet 2, rack by the door."
            optional
            value={where.newPlace}
            onChange={(newPlace) => onChange({ placeLabel: '', newPlace })}
            error={adding.error}
            enterKeyHint="done"
            onEnter={onEnter}
          />
          {children}
          {adding.problem && !adding.problem.fields ? (
            <PlainError happened={adding.problem.what} kept={adding.problem.kept} toDo={adding.problem.todo} />
          ) : null}
        </>
      ) : null}
    </>
  );
}

/** Where it goes, for the words of a key: `cabinet 2 (new)`; undefined while there is no place. */
export function sayWhere({ placeLabel, newPlace }: Where, places: readonly PlaceOption[]): string | undefined {
  if (placeLabel === '' && newPlace.trim() !== '') return `${newPlace.trim()} (new)`;
  return places.find((one) => one.label === placeLabel)?.name;
}
