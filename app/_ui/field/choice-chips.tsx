'use client';

import { useId } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, FieldError, type FieldWords } from '@/app/_ui/field/field-shell';

export interface ChoiceChipsProps extends FieldWords {
  name?: string;
  options: readonly { value: string; label: string; hint?: string }[];
  value?: string;
  defaultValue?: string;
  onChange?: (value: string) => void;
}

/** One of a few, all in sight. Chips wrap; the chosen one is filled with ink. */
export function ChoiceChips({ options, name, value, defaultValue, onChange, ...words }: ChoiceChipsProps) {
  const id = useId();
  return (
    <fieldset className={styles.field} aria-describedby={describedBy(id, words)}>
      <legend className={styles.label}>
        {words.label}
        {words.optional ? <span className={styles.optional}> can stay empty</span> : null}
      </legend>
      {words.hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {words.hint}
        </p>
      ) : null}
      <div className={styles.chips}>
        {options.map((option) => (
          <label key={option.value} className={styles.chip}>
            <input
              type="radio"
              className="unseen"
              name={name ?? id}
              value={option.value}
              checked={value === undefined ? undefined : value === option.value}
              defaultChecked={value === undefined ? defaultValue === option.value : undefined}
              onChange={() => onChange?.(option.value)}
            />
            <span>{option.label}</span>
            {option.hint ? <span className={styles.chipHint}>{option.hint}</span> : null}
          </label>
        ))}
      </div>
      {words.error ? <FieldError id={`${id}-error`}>{words.error}</FieldError> : null}
    </fieldset>
  );
}
