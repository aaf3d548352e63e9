'use client';

import { useId } from 'react';
import { describedBy, FieldShell, type FieldWords } from '@/app/_ui/field/field-shell';
import { usePhotoCheck } from '@/app/_ui/photos/use-photo-check';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';

/** A picture from the camera or the device, refused at once where it is too large. Emptied by giving it a new `key`. */
export function PictureField({ onChange, ...given }: FieldWords & { onChange: (picture: File | undefined) => void }) {
  const id = useId();
  const { wrong, take } = usePhotoCheck(onChange);
  const words = { ...given, error: wrong ?? given.error };
  return (
    <FieldShell id={id} {...words}>
      <input
        id={id}
        type="file"
        accept="image/*"
        className={styles.picture}
        aria-describedby={describedBy(id, words)}
        aria-invalid={words.error ? true : undefined}
        onChange={(choice) => take(choice.currentTarget.files?.[0])}
      />
    </FieldShell>
  );
}
