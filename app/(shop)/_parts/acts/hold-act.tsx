'use client';

import { useState } from 'react';
import type { ChangedHold } from '@/app/_server/stock/change-hold';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { holdAction } from '@/app/(shop)/_parts/acts/actions';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';

const STATES: Record<HoldState, { label: string; hint?: string; now: string }> = {
  free: { label: 'Release', now: 'free' },
  'on-hold': { label: 'On hold', hint: 'wait with it', now: 'on hold' },
  quarantine: { label: 'Quarantine', hint: 'until inspected', now: 'in quarantine' },
  recalled: { label: 'Recalled', hint: 'by its maker', now: 'recalled' },
};

export interface HoldActProps {
  stockId: number;
  hold: HoldState;
  /** "this container", "the whole lot", "this slab" */
  thing: string;
  /** A maker recalls lots, not wood. */
  states: readonly HoldState[];
  /** What else is released with it. */
  releases?: string;
}

/** Sets a thing apart, or releases it: a decision with its reason. */
export function HoldAct({ stockId, hold, thing, states, releases }: HoldActProps) {
  const [next, setNext] = useState<HoldState>(hold === 'free' ? 'on-hold' : 'free');
  const [why, setWhy] = useState('');
  const options = states.filter((state) => state !== hold);
  const releasing = next === 'free';
  return (
    <Fold group="act" title={hold === 'free' ? `Hold ${thing}` : `Release ${thing}`} now={STATES[hold].now}>
      <ActForm<ChangedHold>
        action={holdAction}
        input={{ stockId, hold: next, why }}
        words={
          releasing
            ? `Release ${thing}`
            : next === 'on-hold'
              ? `Put ${thing} on hold`
              : `${STATES[next].label}: ${thing}`
        }
        done={(changed) => (releasing ? sayReleased(changed) : `It is ${STATES[next].now} now: Pull says Stop.`)}
        onDone={() => setWhy('')}
      >
        {(errors) => (
          <>
            <ChoiceChips
              label="What shall it be?"
              options={options.map((state) => ({ value: state, label: STATES[state].label, hint: STATES[state].hint }))}
              value={next}
              onChange={(value) => setNext(options.find((state) => state === value) ?? next)}
            />
            {releasing && releases ? <p>{releases}</p> : null}
            <WhyField
              hint={
                releasing ? 'What makes it fit to be used again. It stays in the history.' : 'It stays in the history.'
              }
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

const sayReleased = ({ with: alike }: ChangedHold): string =>
  alike === 0 ? 'Released.' : `Released, and ${alike === 1 ? '1 container' : `${alike} containers`} with it.`;
