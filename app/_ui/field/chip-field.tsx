import { type ComponentProps, useId } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, FieldError, type FieldWords } from '@/app/_ui/field/field-shell';

export interface Chip<V extends string> {
  value: V;
  label: string;
  hint?: string;
}

/** A few chips in sight under one label; `control` says what the unseen input of each is, given an id of the whole. */
export function ChipField<V extends string>({
  options,
  control,
  ...words
}: FieldWords & { options: readonly Chip<V>[]; control: (value: V, id: string) => ComponentProps<'input'> }) {
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
            <input {...control(option.value, id)} className="unseen" />
            <span>{option.label}</span>
            {option.hint ? <span className={styles.chipHint}>{option.hint}</span> : null}
          </label>
        ))}
      </div>
      {words.error ? <FieldError id={`${id}-error`}>{words.error}</FieldError> : null}
    </fieldset>
  );
}
