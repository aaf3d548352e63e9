'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { NumberStep } from '@/app/_ui/field/number-step';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { SHAPES } from '@/app/(shop)/jobs/[id]/_ui/part-shapes';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A part as it is typed. */
export type TypedPart = {
  kind: string;
  name: string;
  count: string;
  shape: string;
  lengthNm: string;
  widthNm: string;
  thicknessNm: string;
  note: string;
};

export const NEW_PART: TypedPart = {
  kind: 'top',
  name: '',
  count: '1',
  shape: 'rectangle',
  lengthNm: '',
  widthNm: '',
  thicknessNm: '',
  note: '',
};

const KINDS = [
  { value: 'top', label: 'Top' },
  { value: 'base', label: 'Base part' },
  { value: 'other', label: 'Other' },
];

/** The fields of a part: what it is, and its size as it is finished. */
export function PartForm({
  part,
  onChange,
  errors,
  prefer,
}: {
  part: TypedPart;
  onChange: (part: TypedPart) => void;
  errors: Readonly<Record<string, string | undefined>>;
  prefer: UnitSystem;
}) {
  const set = (change: Partial<TypedPart>) => onChange({ ...part, ...change });
  const isTop = part.kind === 'top';
  const isRound = isTop && part.shape === 'round';
  const length = (field: 'lengthNm' | 'widthNm' | 'thicknessNm', label: string) => (
    <LengthField
      label={label}
      optional
      prefer={prefer}
      value={part[field]}
      onChange={(text) => set({ [field]: text })}
      error={errors[field]}
    />
  );
  return (
    <>
      <ChoiceChips
        label="What is it?"
        options={KINDS}
        value={part.kind}
        onChange={(kind) => set({ kind })}
        error={errors.kind}
      />
      <TextField
        label="Name of the part"
        value={part.name}
        onChange={(name) => set({ name })}
        maxLength={120}
        error={errors.name}
      />
      <NumberStep
        label="How many"
        value={part.count}
        onChange={(count) => set({ count })}
        min={1}
        max={999}
        error={errors.count}
      />
      {isTop ? (
        <SelectField
          label="Shape"
          options={SHAPES}
          value={part.shape}
          onChange={(shape) => set({ shape })}
          error={errors.shape}
        />
      ) : null}
      {length('lengthNm', isRound ? 'Across' : 'Length')}
      {isRound ? null : length('widthNm', 'Width')}
      {length('thicknessNm', 'Thickness')}
      <TextField
        label="Note on it"
        optional
        value={part.note}
        onChange={(note) => set({ note })}
        maxLength={2000}
        error={errors.note}
      />
    </>
  );
}
