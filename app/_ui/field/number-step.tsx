'use client';

import { Input } from '@mantine/core';
import { type KeyboardEvent, useId, useState } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, FieldShell, type FieldWords } from '@/app/_ui/field/field-shell';
import { stepNumber } from '@/app/_ui/field/step-number';

export interface NumberStepProps extends FieldWords {
  name?: string;
  /** What is typed, as text, so that a half-typed number survives. */
  value?: string;
  defaultValue?: string;
  onChange?: (text: string) => void;
  min?: number;
  max?: number;
  step?: number;
  /** What is counted: `{ one: 'tin', many: 'tins' }`. */
  unit?: { one: string; many: string };
}

/** A count between two big keys. It can be typed as well. */
export function NumberStep(props: NumberStepProps) {
  const { name, value, defaultValue = '1', onChange, min = 0, max = 9999, step = 1, unit, ...words } = props;
  const id = useId();
  const [own, setOwn] = useState(defaultValue);
  const text = value ?? own;
  const set = (next: string) => {
    setOwn(next);
    onChange?.(next);
  };
  const stepped = (by: number) => set(stepNumber(text, by, { min, max, step }));
  const number = Number(text.replace(',', '.'));
  const unitWord = unit ? (number === 1 ? unit.one : unit.many) : '';

  const onKeyDown = (press: KeyboardEvent) => {
    const by = press.key === 'ArrowUp' ? 1 : press.key === 'ArrowDown' ? -1 : 0;
    if (by === 0) return;
    press.preventDefault();
    stepped(by);
  };

  return (
    <FieldShell id={id} {...words}>
      <div className={styles.step}>
        <button
          type="button"
          className={styles.stepKey}
          aria-label={`${words.label}: less`}
          disabled={number <= min}
          onClick={() => stepped(-1)}
        >
          <span aria-hidden="true">−</span>
        </button>
        <span className={styles.count}>
          <Input
            name={name}
            value={text}
            inputMode={step % 1 === 0 ? 'numeric' : 'decimal'}
            autoComplete="off"
            error={Boolean(words.error)}
            classNames={{ wrapper: styles.countWrapper, input: styles.countInput }}
            attributes={{ input: { id, 'aria-describedby': `${describedBy(id, words) ?? ''} ${id}-unit`.trim() } }}
            style={{ width: `${Math.max(2, text.length + 1)}ch` }}
            onChange={(change) => set(change.currentTarget.value)}
            onKeyDown={onKeyDown}
          />
          <span id={`${id}-unit`}>{unitWord}</span>
        </span>
        <button
          type="button"
          className={styles.stepKey}
          aria-label={`${words.label}: more`}
          disabled={number >= max}
          onClick={() => stepped(1)}
        >
          <span aria-hidden="true">+</span>
        </button>
      </div>
    </FieldShell>
  );
}
