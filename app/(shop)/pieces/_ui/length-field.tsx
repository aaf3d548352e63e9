'use client';

import type { ReactNode } from 'react';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import type { Nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The length as it is typed; undefined where it does not read as one. An empty field is `empty`. */
export function typedLength(text: string, prefer: UnitSystem, empty?: Nanometres): Nanometres | undefined {
  if (text.trim() === '') return empty;
  const read = parseLength(text, { prefer });
  return read.ok ? read.value : undefined;
}

/** A length in the maker's own writing, with what was understood under it. */
export function LengthField({
  prefer,
  mode,
  ...field
}: {
  prefer: UnitSystem;
  /** A thickness may be typed as lumber is sold: 8/4. */
  mode?: 'length' | 'thickness';
  label: string;
  hint?: ReactNode;
  optional?: boolean;
  value: string;
  onChange: (text: string) => void;
  error?: string;
}) {
  const read = (text: string): Echo => {
    const length = parseLength(text, { prefer, mode });
    if (!length.ok) return { ok: false, says: sayLengthError(length.error, { prefer }) };
    const other = prefer === 'metric' ? 'imperial' : 'metric';
    return {
      ok: true,
      says: `${printLength(length.value, { prefer, denominator: 64 })}, that is ${printLength(length.value, { prefer: other })}.`,
    };
  };
  return <QuantityField {...field} read={read} maxLength={40} />;
}
