'use client';

import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import type { Problem } from '@/shared/result/answer';

const KINDS = [
  { value: 'room', label: 'Room' },
  { value: 'rack', label: 'Rack' },
  { value: 'shelf', label: 'Shelf' },
  { value: 'cabinet', label: 'Cabinet' },
  { value: 'bench', label: 'Bench' },
  { value: 'outside', label: 'Outside' },
] as const;

export interface PlaceValues {
  name: string;
  kind: string;
  parentLabel: string;
}

export interface PlaceChoice {
  label: string;
  says: string;
}

/** What a place is called, what it is, and what it is inside of. */
export function PlaceFields({
  values,
  onChange,
  choices,
  problem,
}: {
  values: PlaceValues;
  onChange: (values: PlaceValues) => void;
  choices: readonly PlaceChoice[];
  problem: Problem | undefined;
}) {
  const errors = useFieldErrors(problem, { ...values });
  return (
    <>
      <TextField
        label="Name"
        hint="As you call it: Cabinet 2, Long rack, Cold shed."
        value={values.name}
        onChange={(name) => onChange({ ...values, name })}
        error={errors.name}
        maxLength={80}
        autoCapitalize="sentences"
      />
      <ChoiceChips
        label="What is it?"
        options={KINDS}
        value={values.kind}
        onChange={(kind) => onChange({ ...values, kind })}
        error={errors.kind}
      />
      {choices.length > 0 ? (
        <SelectField
          label="Inside"
          none="Nothing: it stands on its own"
          options={choices.map(({ label, says }) => ({ value: label, label: says }))}
          value={values.parentLabel}
          onChange={(parentLabel) => onChange({ ...values, parentLabel })}
          error={errors.parentLabel}
        />
      ) : null}
    </>
  );
}
