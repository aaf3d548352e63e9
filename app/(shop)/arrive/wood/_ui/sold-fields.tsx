'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { soldThickness } from '@/app/(shop)/arrive/wood/sold-thickness';
import { printLength } from '@/shared/units/print-length';
import { GRAINS, SURFACINGS } from '@/shared/wood/piece';
import { QUARTER_THICKNESSES, quarterThickness } from '@/shared/wood/quarter-thickness';

export type TypedSold = Pick<TypedWood, 'quarters' | 'surfacing' | 'grain' | 'faceA' | 'faceB' | 'thickness'>;

const SURFACING_WORDS = { rough: 'Rough', S2S: 'Two sides (S2S)', S4S: 'All four (S4S)' };
const GRAIN_WORDS = { length: 'Along the length', width: 'Along the width', none: 'No grain' };

/** How wood is sold: a board by the quarter and how far it is surfaced, a sheet by the grain of its faces and their grade. */
export function SoldFields({
  form,
  typed,
  onChange,
}: {
  form: string;
  typed: TypedSold;
  onChange: (some: Partial<TypedSold>) => void;
}) {
  const asked = form === 'sheet' ? (['sheet'] as const) : form === 'offcut' ? (['board', 'sheet'] as const) : ['board'];
  return (
    <>
      {asked.some((each) => each === 'board') ? <QuarterFields typed={typed} onChange={onChange} /> : null}
      {asked.some((each) => each === 'sheet') ? <FaceFields typed={typed} onChange={onChange} /> : null}
    </>
  );
}

function QuarterFields({ typed, onChange }: { typed: TypedSold; onChange: (some: Partial<TypedSold>) => void }) {
  const size = quarterThickness(Number(typed.quarters));
  const change = (some: Pick<TypedSold, 'quarters' | 'surfacing'>) =>
    onChange({ ...some, thickness: soldThickness(typed, some) });
  const inch = (length: Parameters<typeof printLength>[0]) => printLength(length, { prefer: 'imperial' });
  return (
    <>
      <SelectField
        label="Sold as"
        hint={
          size
            ? `${typed.quarters}/4 is ${inch(size.rough)} rough, ${inch(size.surfacedTwo)} surfaced two sides: published sizes. Measure what came.`
            : 'In quarters of an inch, as hardwood is sold.'
        }
        optional
        none="Not by the quarter"
        options={QUARTER_THICKNESSES.map(({ quarters }) => ({ value: String(quarters), label: `${quarters}/4` }))}
        value={typed.quarters}
        onChange={(quarters) => change({ quarters, surfacing: typed.surfacing })}
      />
      <ChoiceChips
        label="Surfaced"
        optional
        options={[
          { value: '', label: 'Not said' },
          ...SURFACINGS.map((value) => ({ value, label: SURFACING_WORDS[value] })),
        ]}
        value={typed.surfacing}
        onChange={(value) =>
          change({ quarters: typed.quarters, surfacing: SURFACINGS.find((each) => each === value) ?? '' })
        }
      />
    </>
  );
}

function FaceFields({ typed, onChange }: { typed: TypedSold; onChange: (some: Partial<TypedSold>) => void }) {
  return (
    <>
      <ChoiceChips
        label="Grain of the faces"
        optional
        options={[{ value: '', label: 'Not said' }, ...GRAINS.map((value) => ({ value, label: GRAIN_WORDS[value] }))]}
        value={typed.grain}
        onChange={(value) => onChange({ grain: GRAINS.find((each) => each === value) ?? '' })}
      />
      <TextField
        label="Face A"
        hint="Its grade or facing, as the maker says: A, BB, oak veneer, melamine white."
        optional
        maxLength={120}
        value={typed.faceA}
        onChange={(faceA) => onChange({ faceA })}
      />
      <TextField
        label="Face B"
        optional
        maxLength={120}
        value={typed.faceB}
        onChange={(faceB) => onChange({ faceB })}
      />
    </>
  );
}
