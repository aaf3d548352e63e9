'use client';

import { useState } from 'react';
import type { ReleasedAll } from '@/app/_server/trace/release-all';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { releaseAllAction } from '@/app/(shop)/trace/actions';

/** The decision that what one press held may be used again. */
export function ReleaseAllForm({ entryId, count }: { entryId: number; count: number }) {
  const [why, setWhy] = useState('');
  const words = count === 1 ? 'Release it' : `Release all ${count}`;
  return (
    <Fold title={words}>
      <ActForm<ReleasedAll>
        action={releaseAllAction}
        input={{ entryId, why }}
        words={words}
        variant="stop"
        done={({ labels, lots }) =>
          `${labels.length + lots === 1 ? '1 thing is' : `${labels.length + lots} things are`} free again.`
        }
        onDone={() => setWhy('')}
      >
        {(errors) => (
          <WhyField
            label="Why may it be used again?"
            hint="The test that passed, or what the maker wrote. It stays in the history."
            value={why}
            onChange={setWhy}
            error={errors.why}
          />
        )}
      </ActForm>
    </Fold>
  );
}
