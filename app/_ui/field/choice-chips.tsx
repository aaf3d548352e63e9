'use client';

import { type Chip, ChipField } from '@/app/_ui/field/chip-field';
import type { FieldWords } from '@/app/_ui/field/field-shell';

export interface ChoiceChipsProps extends FieldWords {
  name?: string;
  options: readonly Chip<string>[];
  value?: string;
  defaultValue?: string;
  onChange?: (value: string) => void;
}

/** One of a few, all in sight. Chips wrap; the chosen one is filled with ink. */
export function ChoiceChips({ name, value: chosen, defaultValue, onChange, ...field }: ChoiceChipsProps) {
  return (
    <ChipField
      {...field}
      control={(value, id) => ({
        type: 'radio',
        name: name ?? id,
        value,
        checked: chosen === undefined ? undefined : chosen === value,
        defaultChecked: chosen === undefined ? defaultValue === value : undefined,
        onChange: () => onChange?.(value),
      })}
    />
  );
}
