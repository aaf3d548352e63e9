'use client';

import { useState } from 'react';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import styles from '@/app/(shop)/pieces/_ui/readings-table.module.css';
import { strikeAction } from '@/app/(shop)/pieces/actions';

/** Strikes out a reading that was wrong. */
export function StrikeReading({ label, readingId, says }: { label: string; readingId: number; says: string }) {
  const [why, setWhy] = useState('');
  return (
    <details className={styles.strike}>
      <summary aria-label={`Strike out ${says}`}>Strike out</summary>
      <ActForm
        action={strikeAction}
        input={{ label, readingId, why }}
        words={`Strike out ${says}`}
        variant="ghost"
        done="Struck out. It stays in the table and counts for nothing."
      >
        {(errors) => (
          <WhyField
            hint="Wrong piece, meter set to another wood, mistyped. To put it right, write the right one too."
            value={why}
            onChange={setWhy}
            error={errors.why}
          />
        )}
      </ActForm>
    </details>
  );
}
