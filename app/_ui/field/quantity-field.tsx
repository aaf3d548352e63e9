'use client';

import { useState } from 'react';
import type { Echo } from '@/app/_ui/field/field-shell';
import { TextField, type TextFieldProps } from '@/app/_ui/field/text-field';

export interface QuantityFieldProps
  extends Omit<TextFieldProps, 'echo' | 'onChange' | 'type' | 'value' | 'defaultValue' | 'lines'> {
  value?: string;
  defaultValue?: string;
  onChange?: (text: string) => void;
  /** Says what the text means ("2.5 kg, that is 5 lb 8 oz") or what is wrong with it; `null` for an empty field. */
  read: (text: string) => Echo;
}

/** A measure typed with its unit; under it stands what was understood. */
export function QuantityField({ value, defaultValue = '', onChange, read, ...rest }: QuantityFieldProps) {
  const [own, setOwn] = useState(defaultValue);
  const text = value ?? own;
  return (
    <TextField
      {...rest}
      value={text}
      onChange={(next) => {
        setOwn(next);
        onChange?.(next);
      }}
      echo={text.trim() === '' ? null : read(text)}
      autoCapitalize="off"
      spellCheck={false}
    />
  );
}
