'use client';

import { Input } from '@mantine/core';
import { type ComponentProps, type KeyboardEvent, useId } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { describedBy, type Echo, FieldShell, type FieldWords } from '@/app/_ui/field/field-shell';

type Native = Pick<
  ComponentProps<'input'>,
  | 'name'
  | 'defaultValue'
  | 'value'
  | 'type'
  | 'inputMode'
  | 'autoComplete'
  | 'autoCapitalize'
  | 'autoFocus'
  | 'spellCheck'
  | 'maxLength'
  | 'disabled'
  | 'readOnly'
  | 'enterKeyHint'
  | 'placeholder'
  | 'list'
>;

export interface TextFieldProps extends FieldWords, Native {
  onChange?: (text: string) => void;
  /** Takes Enter for itself, where the field is a step of its own inside a larger form. */
  onEnter?: () => void;
  /** Set in the face for codes: labels, lots, numbers printed on a tin. */
  code?: boolean;
  /** More than one line, for notes. */
  lines?: number;
  /** What was understood, under the field. Leave it out where nothing is read. */
  echo?: Echo;
}

/** A field for words. */
export function TextField({
  label,
  hint,
  error,
  optional,
  echo,
  onChange,
  onEnter,
  code,
  lines,
  ...native
}: TextFieldProps) {
  const id = useId();
  const words = { label, hint, error, optional };
  const shared = {
    ...native,
    error: Boolean(error),
    classNames: { wrapper: styles.wrapper, input: styles.input },
    attributes: {
      input: {
        id,
        'aria-describedby': describedBy(id, words, echo !== undefined),
        'aria-required': optional ? undefined : true,
        'data-code': code || undefined,
      },
    },
    autoComplete: native.autoComplete ?? 'off',
    onKeyDown: onEnter
      ? (press: KeyboardEvent) => {
          if (press.key !== 'Enter' || press.nativeEvent.isComposing) return;
          press.preventDefault();
          onEnter();
        }
      : undefined,
  };
  return (
    <FieldShell id={id} {...words} echo={echo}>
      {lines ? (
        <Input
          {...shared}
          component="textarea"
          multiline
          rows={lines}
          onChange={(change) => onChange?.(change.currentTarget.value)}
        />
      ) : (
        <Input {...shared} onChange={(change) => onChange?.(change.currentTarget.value)} />
      )}
    </FieldShell>
  );
}
