'use client';

import { useState } from 'react';
import type { HeldAll } from '@/app/_server/trace/hold-all';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { holdAllAction } from '@/app/(shop)/trace/actions';
import type { TraceKind } from '@/shared/trace/trace-graph';

export interface HoldAllFormProps {
  start: { kind: TraceKind; id: number };
  wide: boolean;
  /** How many things are free: what is left, and the lots. */
  free: number;
}

/** One press that sets all that is left apart. */
export function HoldAllForm({ start, wide, free }: HoldAllFormProps) {
  const [why, setWhy] = useState('');
  return (
    <ActForm<HeldAll>
      action={holdAllAction}
      input={{ ...start, wide, why }}
      words={free === 1 ? 'Put it on hold' : `Put all ${free} on hold`}
      done={({ held, lots }) => sayHeld(held.length + lots.length, lots.length)}
      onDone={() => setWhy('')}
    >
      {(errors) => (
        <WhyField
          label="Why are they held?"
          hint="What was found, or who wrote. It stays in the history of each."
          value={why}
          onChange={setWhy}
          error={errors.why}
        />
      )}
    </ActForm>
  );
}

const sayHeld = (all: number, lots: number): string =>
  `${all === 1 ? '1 thing is' : `${all} things are`} on hold: Pull says Stop${lots > 0 ? ', and to what comes in of the lot too' : ''}.`;
