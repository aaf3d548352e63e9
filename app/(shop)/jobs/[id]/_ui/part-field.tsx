'use client';

import { SelectField } from '@/app/_ui/field/select-field';

/** A part of a job to choose. */
export type PartChoice = { id: number; name: string };

export type PartFieldProps = {
  label: string;
  hint?: string;
  parts: readonly PartChoice[];
  /** Null is the whole job. */
  value: number | null;
  onChange: (partId: number | null) => void;
  error?: string;
};

/** Which part of the job something is for, or the whole job. */
export function PartField({ parts, value, onChange, ...words }: PartFieldProps) {
  return (
    <SelectField
      {...words}
      none="Whole job"
      options={parts.map(({ id, name }) => ({ value: String(id), label: name }))}
      value={value === null ? '' : String(value)}
      onChange={(chosen) => onChange(chosen === '' ? null : Number(chosen))}
    />
  );
}
