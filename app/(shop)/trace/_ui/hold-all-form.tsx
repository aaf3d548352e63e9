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
  /** How many things are left and free. */
  free: number;
}

/** One press that sets all that is left apart. */
export function HoldAllForm({ start, wide, free }: HoldAllFormProps) {
  const [why, setWhy] = useState('');
  return (
    <ActForm<HeldAll>
      action={holdAllAction}
      input={{ ...start, wide, why }}
      words={free === 1 ? 'Put what is left on hold' : `Put all ${free} on hold`}
      done={({ held }) => `${held.length === 1 ? '1 thing is' : `${held.length} things are`} on hold: Pull says Stop.`}
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
