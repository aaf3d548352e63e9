'use client';

import type { ReactNode } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { FieldError } from '@/app/_ui/field/field-shell';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import type { PlanWood } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import {
  anotherStation,
  MEASURES,
  SOLIDS,
  type SolidShape,
  type TypedPlan,
} from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import type { UnitSystem } from '@/shared/units/unit-system';

export type SpaceFieldsProps = {
  typed: TypedPlan;
  set: (change: Partial<TypedPlan>) => void;
  wood: readonly PlanWood[];
  units: UnitSystem;
  error: (field: string) => string | undefined;
  /** What is shown of a river that was searched for; nothing where the pour is about none. */
  river?: ReactNode;
  /** The pieces it was opened for. */
  named?: ReactNode;
};

const RIVER = { value: 'river', label: 'The river found', hint: 'by the outlines of its slabs' } as const;

const FROM: { value: TypedPlan['from']; label: string; hint: string }[] = [
  { value: 'drawing', label: 'The drawing', hint: 'gaps and fills of its pieces' },
  { value: 'form', label: 'A form', hint: 'its size less the wood' },
  { value: 'stations', label: 'River widths', hint: 'measured along it' },
  { value: 'shape', label: 'A shape', hint: 'tray, hole, groove' },
];

const SHAPE_WORDS: Record<SolidShape, string> = {
  box: 'Box',
  cylinder: 'Round',
  ellipse: 'Oval',
  'cone-frustum': 'Round, sloping sides',
  'sloped-tray': 'Tray, sloping sides',
  'v-groove': 'V groove',
};

/** What is to be filled: off the drawing, by the size of a form, by widths along a river, or by a shape. */
export function SpaceFields({ typed, set, wood, units, error, river, named }: SpaceFieldsProps) {
  const from = river ? [RIVER, ...FROM] : FROM;
  const example = units === 'metric' ? '40 mm' : '1 1/2 in';
  return (
    <fieldset className={styles.group}>
      <legend>What it fills</legend>
      <ChoiceChips
        label="Known from"
        options={from}
        value={typed.from}
        onChange={(value) => set({ from: from.find((one) => one.value === value)?.value ?? 'form' })}
      />
      {typed.from === 'river' ? river : null}
      {typed.from === 'river' || typed.from === 'drawing' ? named : null}
      {typed.from === 'drawing' ? <Fills {...{ typed, set, units, error }} /> : null}
      {typed.from === 'river' && typed.fills.length > 0 ? (
        <>
          <p className={styles.with}>Poured with it? Tick only what lies in the wood of the top, not in the river.</p>
          <Fills {...{ typed, set, units, error }} />
        </>
      ) : null}
      {typed.from === 'form' ? (
        <>
          <Measures shape="box" {...{ typed, set, error, example }} />
          <TextField
            label="Wood that stands in it"
            hint="As a volume, for example 9 L. Tap a piece to put in what its drawing says."
            optional
            value={typed.wood}
            onChange={(text) => set({ wood: text })}
            error={error('wood')}
          />
          {wood.length > 0 ? (
            <div className={styles.rowKeys}>
              {wood.map(({ label, words, litres }) => (
                <Key key={label} variant="ghost" onClick={() => set({ wood: litres })}>
                  {words}
                </Key>
              ))}
            </div>
          ) : null}
        </>
      ) : null}
      {typed.from === 'stations' ? <Stations {...{ typed, set, error, example }} /> : null}
      {typed.from === 'shape' ? (
        <>
          <ChoiceChips
            label="Shape"
            options={SOLIDS.map((value) => ({ value, label: SHAPE_WORDS[value] }))}
            value={typed.shape}
            onChange={(value) => set({ shape: SOLIDS.find((one) => one === value) ?? 'box' })}
          />
          <Measures shape={typed.shape} {...{ typed, set, error, example }} />
        </>
      ) : null}
    </fieldset>
  );
}

type Part = Pick<SpaceFieldsProps, 'typed' | 'set' | 'error'>;

function Measures({ shape, typed, set, error, example }: Part & { shape: SolidShape; example: string }) {
  return (
    <div className={styles.pair}>
      {MEASURES[shape].map(([name, words]) => (
        <TextField
          key={name}
          label={words}
          hint={name === 'depth' ? `For example ${example}` : 'Inside the form'}
          value={typed.measures[name] ?? ''}
          onChange={(text) => set({ measures: { ...typed.measures, [name]: text } })}
          error={error(name)}
        />
      ))}
    </div>
  );
}

function Fills({ typed, set, units, error }: Part & { units: UnitSystem }) {
  if (typed.fills.length === 0) {
    return (
      <p className={styles.defer}>
        No piece of this job has a gap or a mark to be filled on its drawing. Measure and mark the pieces it owns, or
        give the size another way.
      </p>
    );
  }
  const change = (nr: number, part: Partial<TypedPlan['fills'][number]>) =>
    set({ fills: typed.fills.map((fill, at) => (at === nr ? { ...fill, ...part } : fill)) });
  const square = units === 'metric' ? 'cm²' : 'in²';
  return (
    <>
      {error('fills') ? <FieldError id="fills-error">{error('fills') ?? ''}</FieldError> : null}
      <ul className={styles.list} aria-label="What the drawings have to fill">
        {typed.fills.map((fill, nr) => (
          <li key={fill.id}>
            <label className={styles.tick}>
              <input
                type="checkbox"
                checked={fill.on}
                onChange={(press) => change(nr, { on: press.currentTarget.checked })}
              />
              <span>{fill.name}</span>
            </label>
            {fill.on ? (
              <div className={styles.pair}>
                <TextField
                  label={`Area, ${square}`}
                  value={fill.area}
                  onChange={(area) => change(nr, { area })}
                  error={error(`area.${nr}`)}
                />
                <TextField
                  label="Depth"
                  value={fill.depth}
                  onChange={(depth) => change(nr, { depth })}
                  error={error(`depth.${nr}`)}
                />
              </div>
            ) : null}
          </li>
        ))}
      </ul>
    </>
  );
}

function Stations({ typed, set, error, example }: Part & { example: string }) {
  const change = (nr: number, part: Partial<TypedPlan['stations'][number]>) =>
    set({ stations: typed.stations.map((row, at) => (at === nr ? { ...row, ...part } : row)) });
  return (
    <>
      {error('stations') ? <FieldError id="stations-error">{error('stations') ?? ''}</FieldError> : null}
      {typed.stations.map((row, nr) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: stations have no name of their own and are only added at the end
        <div key={nr} className={styles.station}>
          <TextField
            label={`Station ${nr + 1}, along`}
            hint={nr === 0 ? 'From one end of the river.' : undefined}
            optional={nr > 1}
            value={row.at}
            onChange={(at) => change(nr, { at })}
            error={error(`at.${nr}`)}
          />
          <TextField
            label={`Width at station ${nr + 1}`}
            hint={nr === 0 ? 'At the top, from bank to bank.' : undefined}
            optional={nr > 1}
            value={row.width}
            onChange={(width) => change(nr, { width })}
            error={error(`width.${nr}`)}
          />
          <TextField
            label={`Width at the bottom of station ${nr + 1}`}
            hint={nr === 0 ? 'Where the banks slope. Empty: as at the top.' : undefined}
            optional
            value={row.bottom}
            onChange={(bottom) => change(nr, { bottom })}
            error={error(`bottom.${nr}`)}
          />
          <TextField
            label={`Depth at station ${nr + 1}`}
            hint={nr === 0 ? 'Where it varies. Empty: the depth of the river.' : undefined}
            optional
            value={row.depth}
            onChange={(depth) => change(nr, { depth })}
            error={error(`deep.${nr}`)}
          />
        </div>
      ))}
      <div className={styles.rowKeys}>
        <Key variant="ghost" onClick={() => set({ stations: [...typed.stations, anotherStation()] })}>
          Another station
        </Key>
      </div>
      <TextField
        label="Depth of the river"
        hint={`For example ${example}. Where no station says its own.`}
        value={typed.depth}
        onChange={(depth) => set({ depth })}
        error={error('depth')}
      />
    </>
  );
}
