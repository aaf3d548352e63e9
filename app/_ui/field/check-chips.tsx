'use client';

import { useId } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, FieldError, type FieldWords } from '@/app/_ui/field/field-shell';

export interface CheckChipsProps<V extends string> extends FieldWords {
  options: readonly { value: V; label: string; hint?: string }[];
  values: readonly V[];
  onChange: (values: V[]) => void;
}

/** Any of a few, all in sight: each chip is on or off by itself. */
export function CheckChips<V extends string>({ options, values, onChange, ...words }: CheckChipsProps<V>) {
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
              type="checkbox"
              className="unseen"
              checked={values.includes(option.value)}
              onChange={(change) =>
                onChange(
                  change.currentTarget.checked
                    ? [...values, option.value]
                    : values.filter((value) => value !== option.value),
                )
              }
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
