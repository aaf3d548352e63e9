'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import { MARK_KINDS, type MarkKind, type TypedMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MarkFieldsProps {
  typed: TypedMark;
  errors: Readonly<Record<string, string | undefined>>;
  prefer: UnitSystem;
  onChange: (typed: TypedMark) => void;
}

/** What is long and thin begins as a line, the rest round. */
const LINES: readonly MarkKind[] = ['check', 'split', 'shake', 'break'];
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Everything there is to say of one mark; only what its kind asks for is shown. */
export function MarkFields({ typed, errors, prefer, onChange }: MarkFieldsProps) {
  const set = (more: Partial<TypedMark>) => onChange({ ...typed, ...more });
  const example = prefer === 'metric' ? '1200; -85' : '47 1/4; -3 3/8';
  const isDefect = typed.kind !== 'strap' && typed.kind !== 'end check';
  return (
    <>
      <SelectField
        label="What it is"
        options={MARK_KINDS.map((value) => ({ value, label: capital(value) }))}
        value={typed.kind}
        onChange={(value) => {
          const kind = MARK_KINDS.find((each) => each === value) ?? 'knot';
          set({ kind, shape: LINES.includes(kind) ? 'line' : 'round', points: '' });
        }}
      />
      {typed.kind === 'end check' ? (
        <>
          <ChoiceChips
            label="At which end"
            options={[
              { value: 'start', label: 'Start of the line' },
              { value: 'end', label: 'End of the line' },
            ]}
            value={typed.end}
            onChange={(value) => set({ end: value === 'end' ? 'end' : 'start' })}
          />
          <LengthField
            label="How far it runs in"
            hint="The deepest of them, along the grain. That much is trimmed before anything is made."
            prefer={prefer}
            value={typed.depth}
            onChange={(depth) => set({ depth })}
            error={errors.depth}
          />
        </>
      ) : null}
      {isDefect ? (
        <ChoiceChips
          label="Its shape"
          options={[
            { value: 'round', label: 'Round' },
            { value: 'line', label: 'A crack' },
            { value: 'outline', label: 'Its outline' },
          ]}
          value={typed.shape}
          onChange={(value) => set({ shape: value as TypedMark['shape'], points: '' })}
        />
      ) : null}
      {typed.kind === 'end check' ? null : (
        <TextField
          label={isDefect && typed.shape !== 'round' ? 'Its points' : 'Where'}
          hint={
            typed.kind === 'strap'
              ? `Tap where the band runs, or type along; across, for example ${example}. A second line gives it a slant.`
              : `Tap the drawing, or type along; across, left above zero: ${example}.${typed.shape === 'round' ? '' : ' One point a line.'}`
          }
          lines={typed.shape === 'round' && isDefect ? undefined : 3}
          value={typed.points}
          onChange={(points) => set({ points })}
          maxLength={4000}
          error={errors.points ?? errors.place}
        />
      )}
      {isDefect && typed.shape !== 'outline' ? (
        <LengthField
          label={typed.shape === 'round' ? 'How big across' : 'How wide the crack is'}
          prefer={prefer}
          value={typed.size}
          onChange={(size) => set({ size })}
          error={errors.size}
        />
      ) : null}
      {isDefect ? (
        <>
          <ChoiceChips
            label="How deep"
            options={[
              { value: 'through', label: 'Right through' },
              { value: 'A', label: 'From face A' },
              { value: 'B', label: 'From face B' },
            ]}
            value={typed.face}
            onChange={(value) => set({ face: value as TypedMark['face'] })}
          />
          {typed.face === 'through' ? null : (
            <LengthField
              label="Depth"
              hint="Flattening that takes as much off this face takes it away."
              prefer={prefer}
              value={typed.depth}
              onChange={(depth) => set({ depth })}
              error={errors.depth}
            />
          )}
          <ChoiceChips
            label="What to do with it"
            options={[
              { value: 'keep-out', label: 'Keep it out of the top' },
              { value: 'fill', label: 'Fill it with resin' },
              { value: 'leave', label: 'Leave it' },
            ]}
            value={typed.decision}
            onChange={(value) => set({ decision: value as TypedMark['decision'] })}
          />
        </>
      ) : null}
      <TextField label="Note" optional value={typed.note} onChange={(note) => set({ note })} maxLength={300} />
    </>
  );
}
