'use client';

import { Input } from '@mantine/core';
import { useId } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, FieldShell, type FieldWords } from '@/app/_ui/field/field-shell';

export interface SelectFieldProps extends FieldWords {
  name?: string;
  options: readonly { value: string; label: string }[];
  /** The words of the empty choice: "Choose a place". */
  none?: string;
  value?: string;
  defaultValue?: string;
  onChange?: (value: string) => void;
  disabled?: boolean;
}

/** One of many. The device's own list opens, which is the easiest to hit with gloves on. */
export function SelectField({ options, none, onChange, label, hint, error, optional, ...native }: SelectFieldProps) {
  const id = useId();
  const words = { label, hint, error, optional };
  return (
    <FieldShell id={id} {...words}>
      <Input
        {...native}
        component="select"
        pointer
        rightSection={<span className={styles.opens} aria-hidden="true" />}
        error={Boolean(error)}
        classNames={{ wrapper: styles.wrapper, input: styles.input }}
        attributes={{ input: { id, 'aria-describedby': describedBy(id, words), 'data-select': true } }}
        onChange={(change) => onChange?.(change.currentTarget.value)}
      >
        {none !== undefined ? <option value="">{none}</option> : null}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </Input>
    </FieldShell>
  );
}
