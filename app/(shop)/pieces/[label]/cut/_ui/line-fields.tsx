'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import { isDrawn, LINE_FROM, newLine, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { LINE_WAYS, type LineWay } from '@/shared/outline/cut-line';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface LineFieldsProps {
  line: TypedLine;
  /** The pieces there are before this line, and a place in each. */
  before: readonly Point[];
  problems: { distance?: string; points?: string };
  prefer: UnitSystem;
  onChange: (line: TypedLine) => void;
}

export const WAY_WORDS: Record<LineWay, string> = {
  cross: 'Cross-cut',
  rip: 'Rip',
  free: 'Free line',
  break: 'Break',
};

const FROM: Record<'cross' | 'rip', readonly { value: string; label: string }[]> = {
  cross: [
    { value: 'start', label: 'The start' },
    { value: 'end', label: 'The end' },
  ],
  rip: [
    { value: 'line', label: 'The chalk line' },
    { value: 'left', label: 'The left edge' },
    { value: 'right', label: 'The right edge' },
  ],
};

/** Everything there is to say of one line; only what its kind asks for is shown. */
export function LineFields({ line, before, problems, prefer, onChange }: LineFieldsProps) {
  const example = prefer === 'metric' ? '1200; -85' : '47 1/4; -3 3/8';
  const inPart = before.findIndex((at) => line.within && at.x === line.within.x && at.y === line.within.y);
  return (
    <>
      <ChoiceChips
        label="How"
        options={LINE_WAYS.map((value) => ({ value, label: WAY_WORDS[value] }))}
        value={line.way}
        onChange={(value) => {
          const way = LINE_WAYS.find((each) => each === value) ?? 'cross';
          onChange({ ...newLine(way), within: line.within });
        }}
      />
      {isDrawn(line) ? (
        <TextField
          label="Its points"
          hint={`Tap along it on the drawing, or type along; across, left above zero: ${example}. One point a line. Both ends run on to the edges.`}
          lines={3}
          value={line.points}
          onChange={(points) => onChange({ ...line, points })}
          maxLength={4000}
          error={problems.points}
        />
      ) : (
        <>
          <ChoiceChips
            label="Measured from"
            options={FROM[line.way === 'rip' ? 'rip' : 'cross']}
            value={line.from}
            onChange={(value) =>
              onChange({ ...line, from: LINE_FROM.find((each) => each === value) ?? line.from, distance: '' })
            }
          />
          <LengthField
            label="How far"
            hint={
              line.from === 'line'
                ? 'To the left of the line; with a minus to the right of it. To the middle of the kerf.'
                : 'To the middle of the kerf. Tap the drawing to set it.'
            }
            prefer={prefer}
            value={line.distance}
            onChange={(distance) => onChange({ ...line, distance })}
            error={problems.distance}
          />
        </>
      )}
      {before.length > 1 ? (
        <SelectField
          label="It goes through"
          options={[
            { value: '', label: 'Everything in its way' },
            ...before.map((_, nr) => ({ value: String(nr), label: `Piece ${nr + 1} alone` })),
          ]}
          value={inPart < 0 ? '' : String(inPart)}
          onChange={(value) => onChange({ ...line, within: value === '' ? null : (before[Number(value)] ?? null) })}
        />
      ) : null}
    </>
  );
}
