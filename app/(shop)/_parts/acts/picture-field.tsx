'use client';

import { useId } from 'react';
import { describedBy, FieldShell, type FieldWords } from '@/app/_ui/field/field-shell';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';

/** A picture from the camera or the device. Emptied by giving it a new `key`. */
export function PictureField({ onChange, ...words }: FieldWords & { onChange: (picture: File | undefined) => void }) {
  const id = useId();
  return (
    <FieldShell id={id} {...words}>
      <input
        id={id}
        type="file"
        accept="image/*"
        className={styles.picture}
        aria-describedby={describedBy(id, words)}
        onChange={(choice) => onChange(choice.currentTarget.files?.[0])}
      />
    </FieldShell>
  );
}
