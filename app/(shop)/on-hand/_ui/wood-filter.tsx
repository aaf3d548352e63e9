'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { isFilter, NO_FILTER, type TypedFilter } from '@/app/(shop)/on-hand/ask';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';
import { PIECE_FORMS } from '@/shared/wood/piece';

const FORM_WORDS = { slab: 'Slabs', board: 'Boards', pack: 'Packs', sheet: 'Sheets', offcut: 'Offcuts' };

export interface WoodFilterProps {
  filter: TypedFilter | undefined;
  species: readonly string[];
  prefer: UnitSystem;
  /** `soon` while a text is being typed. */
  onChange: (filter: TypedFilter | undefined, soon: boolean) => void;
}

/** Narrows the wood shelf: form, wood, what is still to be had, how thick and how long at least. */
export function WoodFilter({ filter = NO_FILTER, species, prefer, onChange }: WoodFilterProps) {
  const set = (some: Partial<TypedFilter>, soon = false) => {
    const next = { ...filter, ...some };
    onChange(isFilter(next) ? next : undefined, soon);
  };
  const read =
    (mode: 'length' | 'thickness') =>
    (text: string): Echo => {
      const length = parseLength(text, { prefer, mode });
      if (!length.ok) return { ok: false, says: sayLengthError(length.error, { prefer }) };
      return { ok: true, says: `${printLength(length.value, { prefer })} or more.` };
    };
  return (
    <Fold title="Narrow it down" now={sayFilter(filter) || 'form, wood, thickness, length'}>
      <ChoiceChips
        label="Form"
        options={[{ value: '', label: 'All' }, ...PIECE_FORMS.map((value) => ({ value, label: FORM_WORDS[value] }))]}
        value={filter.form}
        onChange={(form) => set({ form: PIECE_FORMS.find((each) => each === form) ?? '' })}
      />
      <SelectField
        label="Wood"
        none="Every wood"
        options={species.map((wood) => ({ value: wood, label: wood }))}
        value={filter.species}
        onChange={(wood) => set({ species: wood })}
      />
      <QuantityField
        label="At least this thick"
        optional
        maxLength={100}
        value={filter.thick}
        onChange={(thick) => set({ thick }, true)}
        read={read('thickness')}
      />
      <QuantityField
        label="At least this long"
        optional
        maxLength={100}
        value={filter.long}
        onChange={(long) => set({ long }, true)}
        read={read('length')}
      />
      <ChoiceChips
        label="Promised or held"
        options={[
          { value: 'all', label: 'Show them too' },
          { value: 'free', label: 'Only free ones' },
        ]}
        value={filter.free ? 'free' : 'all'}
        onChange={(value) => set({ free: value === 'free' })}
      />
      {isFilter(filter) ? (
        <Key variant="ghost" onClick={() => onChange(undefined, false)}>
          Show all of it
        </Key>
      ) : null}
    </Fold>
  );
}

function sayFilter({ form, species, free, thick, long }: TypedFilter): string {
  return [
    form ? FORM_WORDS[form].toLowerCase() : '',
    species,
    thick.trim() ? `${thick.trim()} thick` : '',
    long.trim() ? `${long.trim()} long` : '',
    free ? 'free' : '',
  ]
    .filter(Boolean)
    .join(', ');
}
