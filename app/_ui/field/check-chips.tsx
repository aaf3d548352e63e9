'use client';

import { type Chip, ChipField } from '@/app/_ui/field/chip-field';
import type { FieldWords } from '@/app/_ui/field/field-shell';

export interface CheckChipsProps<V extends string> extends FieldWords {
  options: readonly Chip<V>[];
  values: readonly V[];
  onChange: (values: V[]) => void;
}

/** Any of a few, all in sight: each chip is on or off by itself. */
export function CheckChips<V extends string>({ values, onChange, ...field }: CheckChipsProps<V>) {
  return (
    <ChipField
      {...field}
      control={(value) => ({
        type: 'checkbox',
        checked: values.includes(value),
        onChange: (change) =>
          onChange(change.currentTarget.checked ? [...values, value] : values.filter((each) => each !== value)),
      })}
    />
  );
}
