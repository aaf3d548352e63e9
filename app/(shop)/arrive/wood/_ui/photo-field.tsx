'use client';

import { useEffect, useId, useState } from 'react';
import { FieldError } from '@/app/_ui/field/field-shell';
import { usePhotoCheck } from '@/app/_ui/photos/use-photo-check';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';

/** A picture taken now or chosen. It is checked, made smaller and stripped of place and time where it is kept. */
export function PhotoField({
  photo,
  onChange,
  error,
}: {
  photo: File | undefined;
  onChange: (photo: File | undefined) => void;
  error?: string;
}) {
  const id = useId();
  const check = usePhotoCheck(onChange);
  const [shown, setShown] = useState<string>();

  useEffect(() => {
    if (!photo?.type.startsWith('image/')) return setShown(undefined);
    const address = URL.createObjectURL(photo);
    setShown(address);
    return () => URL.revokeObjectURL(address);
  }, [photo]);

  const wrong = check.wrong ?? error;
  return (
    <div className={styles.photo}>
      <label htmlFor={id}>
        <b>Photo</b> <span className={styles.maker}>can stay empty</span>
      </label>
      <input
        id={id}
        type="file"
        accept="image/*"
        aria-invalid={wrong ? true : undefined}
        aria-describedby={wrong ? `${id}-error` : undefined}
        onChange={(change) => check.take(change.currentTarget.files?.[0])}
      />
      {wrong ? <FieldError id={`${id}-error`}>{wrong}</FieldError> : null}
      {shown ? (
        // biome-ignore lint/performance/noImgElement: the picture is on this device and never fetched
        <img src={shown} alt="Chosen for this piece" className={styles.preview} />
      ) : null}
    </div>
  );
}
