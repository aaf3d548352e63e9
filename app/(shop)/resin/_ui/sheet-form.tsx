'use client';

import { useId, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { FieldError, FieldShell } from '@/app/_ui/field/field-shell';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import acts from '@/app/(shop)/_parts/acts/acts.module.css';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { keepSheetAction } from '@/app/(shop)/resin/actions';
import { sayRatioCheck } from '@/app/(shop)/resin/say-sheet';
import {
  anotherDepth,
  anotherPotLife,
  fieldOfFact,
  readTypedSheet,
  type SheetField,
  type TypedDepth,
  type TypedPotLife,
  type TypedSheet,
} from '@/app/(shop)/resin/typed-sheet';
import { sayPhotoSize } from '@/shared/photos/photo-limits';
import { MOST_SHEET_BYTES } from '@/shared/photos/sheet-limits';
import type { UnitSystem } from '@/shared/units/unit-system';

export type SheetFormProps = {
  systemId: number;
  name: string;
  typed: TypedSheet;
  /** The file that is in the book now. */
  fileName: string | null;
  units: UnitSystem;
};

/** A data sheet, field by field, as it is printed; the ratios are checked against each other while they are typed. */
export function SheetForm({ systemId, name, typed: start, fileName, units }: SheetFormProps) {
  const { run, pending, problem } = useAct(keepSheetAction);
  const say = useNotice();
  const [typed, setTyped] = useState(start);
  const [file, setFile] = useState<File>();
  const [wrongFile, setWrongFile] = useState<string>();
  const [pressed, setPressed] = useState(false);
  const fileId = useId();
  const { facts, faults } = readTypedSheet(typed, units);
  const check = sayRatioCheck(facts);
  const refused: Record<string, string> = {};
  for (const [field, words] of Object.entries(problem?.fields ?? {})) refused[fieldOfFact(field)] ??= words;
  const error = (field: string) => (pressed ? (faults[field] ?? refused[field]) : undefined);
  const depthExample = units === 'metric' ? '50 mm' : '2 in';
  const warm = units === 'metric' ? '25 °C' : '77 °F';

  const field = (of: SheetField, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      optional
      inputMode="decimal"
      value={typed[of]}
      onChange={(text) => setTyped({ ...typed, [of]: text })}
      error={error(of)}
    />
  );
  const setDepth = (nr: number, change: Partial<TypedDepth>) =>
    setTyped({ ...typed, depths: typed.depths.map((row, at) => (at === nr ? { ...row, ...change } : row)) });

  const setPotLife = (nr: number, change: Partial<TypedPotLife>) =>
    setTyped({ ...typed, potLives: typed.potLives.map((row, at) => (at === nr ? { ...row, ...change } : row)) });

  async function keep() {
    setPressed(true);
    if (Object.keys(faults).length > 0 || wrongFile) return giveFeedback('error');
    const answered = await run({ systemId, typed, sameFile: file === undefined && fileName !== null, file });
    if (!answered.ok) return giveFeedback('error');
    say({ words: `What the sheet of ${name} says is in the book.` });
  }

  return (
    <form
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void keep();
      }}
    >
      <fieldset className={styles.group}>
        <legend>Ratio</legend>
        <div className={styles.pair}>
          {field('massA', 'By mass, part A')}
          {field('massB', 'By mass, part B')}
          {field('volumeA', 'By volume, part A')}
          {field('volumeB', 'By volume, part B')}
          {field('densityA', 'Density of A', 'g/L, the same as kg/m³')}
          {field('densityB', 'Density of B', 'g/L')}
          {field('mixedDensity', 'Density mixed', 'g/L')}
          {field('tolerance', 'May be off by', '% of part B')}
        </div>
        <div role="status">
          {check ? (
            check.ok ? (
              <p className={styles.soft}>{check.says}</p>
            ) : (
              <FieldError id={`${fileId}-ratio`}>{check.says}</FieldError>
            )
          ) : null}
        </div>
        <CheckChips
          label="Sold as a set"
          options={[{ value: 'sets', label: 'A and B only of one lot' }]}
          values={typed.sets ? ['sets'] : []}
          onChange={(values) => setTyped({ ...typed, sets: values.length > 0 })}
        />
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Depth of one lift</legend>
        {typed.depths.map((row, nr) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name of their own and are only added at the end
          <div key={nr} className={styles.pair}>
            <TextField
              label="Greatest"
              hint={`For example ${depthExample}`}
              optional={nr > 0}
              value={row.most}
              onChange={(most) => setDepth(nr, { most })}
              error={error(`most.${nr}`)}
            />
            <TextField
              label="Least"
              optional
              value={row.least}
              onChange={(least) => setDepth(nr, { least })}
              error={error(`least.${nr}`)}
            />
            <TextField
              label="In a room up to"
              hint={`For example ${warm}`}
              optional
              value={row.upTo}
              onChange={(upTo) => setDepth(nr, { upTo })}
              error={error(`upTo.${nr}`)}
            />
            <TextField
              label="No more at once than"
              hint="Mixed, for example 10 kg"
              optional
              value={row.mass}
              onChange={(mass) => setDepth(nr, { mass })}
              error={error(`mass.${nr}`)}
            />
          </div>
        ))}
        <div className={styles.rowKeys}>
          <Key variant="ghost" onClick={() => setTyped({ ...typed, depths: [...typed.depths, anotherDepth()] })}>
            Add a row for another room or mass
          </Key>
        </div>
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Pot life</legend>
        <p className={styles.soft}>
          More resin at once heats itself more and thickens sooner: give a row for every mass the sheet names.
        </p>
        {typed.potLives.map((row, nr) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name of their own and are only added at the end
          <div key={nr} className={styles.pair}>
            <TextField
              label="Minutes"
              optional
              inputMode="decimal"
              value={row.minutes}
              onChange={(minutes) => setPotLife(nr, { minutes })}
              error={error(`potMinutes.${nr}`)}
            />
            <TextField
              label="for a mass of"
              hint="Usually 100 g"
              optional
              value={row.mass}
              onChange={(mass) => setPotLife(nr, { mass })}
              error={error(`potMass.${nr}`)}
            />
            <TextField
              label="at a temperature of"
              hint={`Usually ${units === 'metric' ? '23 °C' : '73 °F'}`}
              optional
              value={row.at}
              onChange={(at) => setPotLife(nr, { at })}
              error={error(`potAt.${nr}`)}
            />
          </div>
        ))}
        <div className={styles.rowKeys}>
          <Key variant="ghost" onClick={() => setTyped({ ...typed, potLives: [...typed.potLives, anotherPotLife()] })}>
            Add a row for another mass
          </Key>
        </div>
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Times</legend>
        <div className={styles.pair}>
          {field('againFrom', 'Pour again from, hours')}
          {field('againTo', 'Pour again to, hours', 'While tacky; then it is sanded.')}
          {field('demould', 'Demould after, hours')}
          {field('fullCure', 'Cured through after, days')}
        </div>
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Room and shrinkage</legend>
        <div className={styles.pair}>
          {field('leastRoom', 'Room at least')}
          {field('mostRoom', 'Room at most')}
          {field('shrinkage', 'Shrinks by', '% of its volume')}
        </div>
      </fieldset>
      <FieldShell
        id={fileId}
        label="The sheet itself"
        optional
        hint={
          fileName === null
            ? `A PDF, or a photo of the page as PNG or JPEG, up to ${sayPhotoSize(MOST_SHEET_BYTES)}. Without it the numbers are marked as typed.`
            : `${fileName} is in the book and stays unless another is chosen.`
        }
        error={wrongFile ?? refused.file}
      >
        <input
          id={fileId}
          type="file"
          accept="application/pdf,image/png,image/jpeg"
          className={acts.picture}
          aria-describedby={`${fileId}-hint`}
          aria-invalid={wrongFile ? true : undefined}
          onChange={(choice) => {
            const chosen = choice.currentTarget.files?.[0];
            const isTooLarge = chosen !== undefined && chosen.size > MOST_SHEET_BYTES;
            setFile(isTooLarge ? undefined : chosen);
            setWrongFile(
              isTooLarge
                ? `That file is ${sayPhotoSize(chosen.size)}; the book takes up to ${sayPhotoSize(MOST_SHEET_BYTES)}.`
                : undefined,
            );
          }}
        />
      </FieldShell>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.rowKeys}>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          Keep the sheet of {name}
        </Key>
      </div>
    </form>
  );
}
