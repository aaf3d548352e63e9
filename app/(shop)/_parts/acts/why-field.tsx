'use client';

import { TextField } from '@/app/_ui/field/text-field';

/** The reason of an act, kept in the history with it. */
export function WhyField({
  label = 'Why?',
  ...field
}: {
  label?: string;
  hint?: string;
  optional?: boolean;
  value: string;
  onChange: (value: string) => void;
  error: string | undefined;
}) {
  return <TextField label={label} maxLength={500} {...field} />;
}
