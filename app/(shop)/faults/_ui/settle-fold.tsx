'use client';

import { useState } from 'react';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { settleAction } from '@/app/(shop)/faults/actions';

/** Says what was done about a fault. */
export function SettleFold({ faultId }: { faultId: number }) {
  const [how, setHow] = useState('');
  return (
    <Fold title="Settle it">
      <ActForm
        action={settleAction}
        input={{ faultId, how }}
        words="It is settled"
        done="The fault is settled. The history keeps how."
        onDone={() => setHow('')}
      >
        {(errors) => (
          <WhyField
            label="What was done about it?"
            hint="Cut out and filled, poured again, or why it may stay."
            value={how}
            onChange={setHow}
            error={errors.how}
          />
        )}
      </ActForm>
    </Fold>
  );
}
