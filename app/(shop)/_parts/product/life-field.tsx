'use client';

import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/_parts/product/product.module.css';
import type { Basis } from '@/shared/shelf-life/types/policy';

export const LIFE_UNIT_OPTIONS = [
  { value: 'day', label: 'days' },
  { value: 'week', label: 'weeks' },
  { value: 'month', label: 'months' },
  { value: 'year', label: 'years' },
];

const BASIS_OPTIONS: { value: Basis; label: string }[] = [
  { value: 'label', label: 'It is printed on the label' },
  { value: 'data-sheet', label: 'The data sheet says so' },
  { value: 'house-default', label: 'House default, our own caution' },
];

export type TypedLife = { count: string; unit: string; basis: Basis };

/** How long it keeps, and whose word that is. A number typed by hand is no house default any more, so the basis is asked. */
export function LifeField({
  label,
  hint,
  value,
  onChange,
  error,
}: {
  label: string;
  hint?: string;
  value: TypedLife;
  onChange: (value: TypedLife) => void;
  error?: string;
}) {
  return (
    <div className={styles.life}>
      <TextField
        label={label}
        hint={hint}
        optional
        inputMode="numeric"
        value={value.count}
        onChange={(count) => onChange({ ...value, count })}
        error={error}
      />
      <SelectField
        label="in"
        options={LIFE_UNIT_OPTIONS}
        value={value.unit}
        onChange={(unit) => onChange({ ...value, unit })}
      />
      <SelectField
        label={`${label}: who says so?`}
        options={BASIS_OPTIONS}
        value={value.basis}
        onChange={(basis) => onChange({ ...value, basis: basis as Basis })}
      />
    </div>
  );
}
