'use client';

import { type ClipboardEvent, useRef, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { FieldError } from '@/app/_ui/field/field-shell';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/arrive/wood/_ui/tally.module.css';
import { TallyList } from '@/app/(shop)/arrive/wood/_ui/tally-list';
import { sayTally } from '@/app/(shop)/arrive/wood/say-tally';
import { readTallyLine, splitTally, type TallyLine, type TypedTally } from '@/app/(shop)/arrive/wood/tally';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface TallyFieldsProps {
  tally: TypedTally;
  onChange: (tally: TypedTally) => void;
  prefer: UnitSystem;
  /** As they are typed in the form: both give the board feet. */
  sold: { thickness: string; quarters: string; surfacing: string };
  error?: string | undefined;
}

/** Boards tallied as they are handled: width, Enter, length, Enter, and the next. A length left empty is that of the board before. */
export function TallyFields({ tally, onChange, prefer, sold, error }: TallyFieldsProps) {
  const box = useRef<HTMLDivElement>(null);
  const [wrong, setWrong] = useState<{ field: 'width' | 'length'; says: string }>();
  const [pasted, setPasted] = useState('');
  const focus = (name: string) => box.current?.querySelector<HTMLInputElement>(`[name="${name}"]`)?.focus();
  const last = tally.lines.at(-1);
  const isFull = tally.lines.length >= MOST_AT_ONCE;

  function addLines(lines: readonly TallyLine[]) {
    onChange({ ...tally, lines: [...tally.lines, ...lines].slice(0, MOST_AT_ONCE), width: '', length: '' });
    setWrong(undefined);
  }

  function addTyped() {
    const line = { width: tally.width.trim(), length: tally.length.trim() || (last?.length ?? '') };
    const read = readTallyLine(line, prefer);
    if (!read.ok) {
      setWrong(read);
      return focus(`tally-${read.field}`);
    }
    addLines([line]);
    focus('tally-width');
  }

  function enterWidth() {
    const [line] = splitTally(tally.width);
    if (line && line.length !== '') return addLines(splitTally(tally.width));
    if (tally.width.trim() === '') return setWrong({ field: 'width', says: 'Give the width.' });
    focus('tally-length');
  }

  /** Whole lines go into the tally at once; one measure goes into its field as usual. */
  function paste(event: ClipboardEvent) {
    const lines = splitTally(event.clipboardData.getData('text'));
    if (lines.length < 2 && !lines.some((line) => line.length !== '')) return;
    event.preventDefault();
    addLines(lines);
  }

  const typed = (field: 'width' | 'length') => (value: string) => {
    onChange({ ...tally, [field]: value });
    if (wrong?.field === field) setWrong(undefined);
  };

  return (
    <div ref={box}>
      <ChoiceChips
        label="Keep them as"
        options={[
          { value: 'pack', label: 'One pack', hint: 'one label' },
          { value: 'singly', label: 'Each its own board', hint: 'a label each' },
        ]}
        value={tally.as}
        onChange={(value) => onChange({ ...tally, as: value === 'singly' ? 'singly' : 'pack' })}
      />
      <div className={styles.entry} onPaste={paste}>
        <TextField
          name="tally-width"
          label={prefer === 'metric' ? 'Width, mm' : 'Width, inches'}
          value={tally.width}
          onChange={typed('width')}
          onEnter={enterWidth}
          enterKeyHint="next"
          inputMode={prefer === 'metric' ? 'decimal' : 'text'}
          maxLength={30}
          error={wrong?.field === 'width' ? wrong.says : undefined}
          disabled={isFull}
        />
        <TextField
          name="tally-length"
          label={prefer === 'metric' ? 'Length, mm' : 'Length, feet'}
          placeholder={last?.length}
          value={tally.length}
          onChange={typed('length')}
          onEnter={addTyped}
          enterKeyHint="done"
          inputMode={prefer === 'metric' ? 'decimal' : 'text'}
          maxLength={30}
          error={wrong?.field === 'length' ? wrong.says : undefined}
          disabled={isFull}
        />
      </div>
      <p className={styles.hint}>
        Enter goes on. {last ? 'An empty length is the one before. ' : ''}
        {prefer === 'imperial' ? 'A length alone is feet; 96" is inches.' : ''}
      </p>
      <Key variant="ghost" onClick={addTyped} disabled={isFull}>
        Add this board
      </Key>
      <p className={styles.total} role="status">
        {sayTally(tally.lines, sold, prefer)}
      </p>
      {error ? <FieldError id="tally-error">{error}</FieldError> : null}
      <TallyList lines={tally.lines} prefer={prefer} onChange={(lines) => onChange({ ...tally, lines })} />
      <Fold title="Paste a written tally" now="one board a line">
        <TextField
          label="Lines"
          hint={
            prefer === 'metric'
              ? 'Width × length, and how many: 150 × 2400 × 3.'
              : 'Width × length, and how many: 6 1/2 × 8 × 3.'
          }
          optional
          lines={6}
          value={pasted}
          onChange={setPasted}
        />
        <Key
          variant="ghost"
          onClick={() => {
            addLines(splitTally(pasted));
            setPasted('');
          }}
        >
          Add these lines
        </Key>
      </Fold>
    </div>
  );
}
