'use client';

import { useState } from 'react';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { discardAction } from '@/app/(shop)/_parts/acts/actions';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';

/** Takes a thing off the shelf for good. `care` says what to mind when it is thrown away. */
export function DiscardAct({ label, what, care }: { label: string; what: string; care?: string }) {
  const [why, setWhy] = useState('');
  return (
    <Fold group="act" title="Throw it away">
      <ActForm
        action={discardAction}
        input={{ label, why }}
        words={`Write off ${what}`}
        variant="stop"
        done="Written off. Reverse it in the history if that was a mistake."
        onDone={() => setWhy('')}
      >
        {(errors) => (
          <>
            {care ? <p>{care}</p> : null}
            <WhyField
              hint="Spoilt, spilt, given away, lost: a few words."
              value={why}
              onChange={setWhy}
              error={errors.why}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
