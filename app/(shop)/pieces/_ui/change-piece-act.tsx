'use client';

import { useId, useState } from 'react';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { SoldFields } from '@/app/(shop)/arrive/wood/_ui/sold-fields';
import { useSpecies } from '@/app/(shop)/arrive/wood/_ui/use-species';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import { changePieceAction } from '@/app/(shop)/pieces/actions';
import { reliedOnAsTyped, type TypedPiece } from '@/app/(shop)/pieces/piece-as-typed';
import type { UnitSystem } from '@/shared/units/unit-system';
import { needsReason } from '@/shared/wood/needs-reason';
import { PIECE_FLAGS } from '@/shared/wood/piece';
import { PIECE_FLAG_WORDS } from '@/shared/wood/piece-flag-words';

const FLAGS = PIECE_FLAGS.map((value) => {
  const words = PIECE_FLAG_WORDS[value];
  return { value, label: words.charAt(0).toUpperCase() + words.slice(1) };
});

export interface ChangePieceActProps {
  label: string;
  form: string;
  /** The piece as the book has it. */
  piece: TypedPiece;
  /** The woods the book has had. */
  species: readonly string[];
  prefer: UnitSystem;
}

/** Puts right what the book says of a piece: the bands were cut, a check opened, a measure was read wrong. */
export function ChangePieceAct({ label, form, piece, species, prefer }: ChangePieceActProps) {
  const [typed, setTyped] = useState(piece);
  const [why, setWhy] = useState('');
  const speciesId = useId();
  // The handbook's names are fetched once another name is typed.
  const offered = useSpecies(typed.species === piece.species ? '' : typed.species, species);
  const set =
    <K extends keyof TypedPiece>(name: K) =>
    (value: TypedPiece[K]) =>
      setTyped((now) => ({ ...now, [name]: value }));
  return (
    <Fold group="act" title="Put it right" now="measures, what is seen on it, flitch, note">
      <ActForm
        action={changePieceAction}
        input={{ label, piece: typed, why }}
        words={`Put this ${form} right`}
        done="Put right. It is judged and drawn by this from now on."
      >
        {(errors) => {
          const measure = (
            name: 'length' | 'width' | 'widthStart' | 'widthMiddle' | 'widthEnd' | 'thickness',
            words: string,
            hint?: string,
          ) => (
            <LengthField
              label={words}
              hint={hint}
              prefer={prefer}
              mode={name === 'thickness' ? 'thickness' : 'length'}
              value={typed[name]}
              onChange={set(name)}
              error={errors[name] ?? errors[name === 'width' ? 'widthStartNm' : `${name}Nm`]}
            />
          );
          return (
            <>
              <CheckChips label="What you see" optional options={FLAGS} values={typed.flags} onChange={set('flags')} />
              {form === 'pack' ? null : measure('length', 'Length')}
              {form === 'pack' ? null : (
                <ChoiceChips
                  label="Width"
                  options={[
                    { value: 'one', label: 'The same all along' },
                    { value: 'three', label: 'At start, middle and end' },
                  ]}
                  value={typed.widths}
                  onChange={(value) => set('widths')(value === 'one' ? 'one' : 'three')}
                />
              )}
              {form === 'pack' ? null : typed.widths === 'one' ? (
                measure('width', 'Width all along')
              ) : (
                <>
                  {measure('widthStart', 'Width at the start')}
                  {measure('widthMiddle', 'Width in the middle', 'Halfway along.')}
                  {measure('widthEnd', 'Width at the end')}
                </>
              )}
              {measure('thickness', 'Thickness', '8/4 is read as 2 inches.')}
              <TextField
                label="Species"
                hint="As you call it: walnut, white oak, birch plywood."
                value={typed.species}
                onChange={set('species')}
                list={speciesId}
                autoCapitalize="sentences"
                maxLength={80}
                error={errors.species}
              />
              <datalist id={speciesId}>
                {offered.map(({ name, alsoKnownAs }) => (
                  <option key={name} value={name} label={alsoKnownAs} />
                ))}
              </datalist>
              <SoldFields form={form} typed={typed} onChange={(some) => setTyped((now) => ({ ...now, ...some }))} />
              {form === 'sheet' || form === 'pack' ? null : (
                <LengthField
                  label="Sapwood, how deep from the edge"
                  hint="Where it runs deepest. A top of heartwood alone keeps clear of it."
                  optional
                  prefer={prefer}
                  value={typed.sapwood}
                  onChange={set('sapwood')}
                  error={errors.sapwood}
                />
              )}
              <TextField
                label="Origin"
                hint="Where the tree stood, as the papers say."
                optional
                value={typed.origin}
                onChange={set('origin')}
                maxLength={120}
                error={errors.origin}
              />
              <TextField
                label="Flitch"
                hint="The log it was sawn from, as you call it."
                optional
                value={typed.flitch}
                onChange={set('flitch')}
                maxLength={80}
                error={errors.flitch}
              />
              <TextField
                label="Number in the flitch"
                hint="Its place as sawn; no other piece of the flitch has it."
                optional
                inputMode="numeric"
                value={typed.flitchNumber}
                onChange={set('flitchNumber')}
                maxLength={3}
                error={errors.flitchNumber}
              />
              <TextField
                label="Note"
                optional
                lines={3}
                value={typed.note}
                onChange={set('note')}
                maxLength={2000}
                error={errors.note}
              />
              <WhyField
                hint="Bands cut, trimmed, read wrong at the door. It stays in the history with what was there before."
                optional={!needsReason(reliedOnAsTyped(piece), reliedOnAsTyped(typed))}
                value={why}
                onChange={setWhy}
                error={errors.why}
              />
            </>
          );
        }}
      </ActForm>
    </Fold>
  );
}
