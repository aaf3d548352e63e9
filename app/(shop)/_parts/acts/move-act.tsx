'use client';

import Link from 'next/link';
import { useState } from 'react';
import { SelectField } from '@/app/_ui/field/select-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { moveAction } from '@/app/(shop)/_parts/acts/actions';

export interface MoveActProps {
  label: string;
  places: readonly { label: string; says: string }[];
  /** The label of the place it stands in, and its name. */
  here: string | null;
  hereWords: string | null;
}

/** Moves one thing to another place. */
export function MoveAct({ label, places, here, hereWords }: MoveActProps) {
  const [place, setPlace] = useState('');
  const chosen = places.find((one) => one.label === place);
  return (
    <Fold group="act" title="Move it" now={hereWords ?? 'no place yet'}>
      <ActForm
        action={moveAction}
        input={{ labels: [label], placeLabel: place }}
        words={chosen ? `Move it to ${chosen.says}` : 'Move it'}
        done={`It stands in ${chosen?.says ?? 'its place'} now.`}
        onDone={() => setPlace('')}
      >
        {(errors) => (
          <SelectField
            label="Where does it go?"
            hint={
              <>
                Many at once: <Link href={`/arrive/move?things=${label}`}>scan them and the place</Link>.
              </>
            }
            none="Choose a place"
            options={places.filter((one) => one.label !== here).map((one) => ({ value: one.label, label: one.says }))}
            value={place}
            onChange={setPlace}
            error={errors.placeLabel}
          />
        )}
      </ActForm>
    </Fold>
  );
}
