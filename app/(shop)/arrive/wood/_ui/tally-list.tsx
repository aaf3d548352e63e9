'use client';

import { memo, useCallback, useRef, useState } from 'react';
import { FieldError } from '@/app/_ui/field/field-shell';
import styles from '@/app/(shop)/arrive/wood/_ui/tally.module.css';
import { readTallyLine, type TallyLine } from '@/app/(shop)/arrive/wood/tally';
import type { UnitSystem } from '@/shared/units/unit-system';
import { sayBoardSize } from '@/shared/wood/say-board-size';
import { tallyBoards } from '@/shared/wood/tally-boards';

interface TallyListProps {
  lines: readonly TallyLine[];
  prefer: UnitSystem;
  onChange: (lines: readonly TallyLine[]) => void;
}

/** The boards of a tally, the last one first. A line that does not read is marked and open to be put right where it stands. */
export function TallyList({ lines, prefer, onChange }: TallyListProps) {
  const now = useRef({ lines, onChange });
  now.current = { lines, onChange };
  const set = useCallback((nr: number, line: TallyLine | undefined) => {
    const { lines: before, onChange: change } = now.current;
    change(before.flatMap((each, index) => (index === nr ? (line ?? []) : each)));
  }, []);
  if (lines.length === 0) return null;
  const surfaces = surfacesOf(lines, prefer);
  return (
    <ol className={styles.list} aria-label="Tally">
      {lines
        .map((line, nr) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its number in the tally.
          <TallyRow key={nr} nr={nr} line={line} surface={surfaces[nr]} prefer={prefer} onSet={set} />
        ))
        .reverse()}
    </ol>
  );
}

/** Surface measure of each line by the rule of a tally, whose exact halves go up and down in turn. */
function surfacesOf(lines: readonly TallyLine[], prefer: UnitSystem): (number | undefined)[] {
  const read = lines.map((line) => readTallyLine(line, prefer));
  const { surface } = tallyBoards(
    read.flatMap((each) => (each.ok ? [each.board] : [])),
    4,
  );
  let next = 0;
  return read.map((each) => (each.ok ? surface[next++] : undefined));
}

const TallyRow = memo(function TallyRow({
  nr,
  line,
  surface,
  prefer,
  onSet,
}: {
  nr: number;
  line: TallyLine;
  surface: number | undefined;
  prefer: UnitSystem;
  onSet: (nr: number, line: TallyLine | undefined) => void;
}) {
  const [isOpen, setOpen] = useState(false);
  const read = readTallyLine(line, prefer);
  const field = (name: 'width' | 'length') => (
    <input
      className={styles.small}
      aria-label={`${name === 'width' ? 'Width' : 'Length'} of board ${nr + 1}`}
      aria-invalid={!read.ok && read.field === name ? true : undefined}
      aria-describedby={!read.ok && read.field === name ? `tally-${nr}-error` : undefined}
      value={line[name]}
      maxLength={30}
      autoComplete="off"
      // Half of what is being typed may read already: the field stays until it is done.
      onFocus={() => setOpen(true)}
      onChange={(change) => onSet(nr, { ...line, [name]: change.currentTarget.value })}
    />
  );
  return (
    <li value={nr + 1} className={styles.row} data-wrong={read.ok ? undefined : true}>
      <span className={styles.nr}>{nr + 1}</span>
      {read.ok && !isOpen ? (
        <span className={styles.size}>
          {sayBoardSize(read.board, prefer)}
          <span className={styles.surface}> {surface} sq ft</span>
        </span>
      ) : (
        <span className={styles.fields}>
          {field('width')} <span aria-hidden="true">×</span> {field('length')}
        </span>
      )}
      <span className={styles.keys}>
        {read.ok ? (
          <button
            type="button"
            className={styles.key}
            aria-label={`Change board ${nr + 1}`}
            onClick={() => setOpen(!isOpen)}
          >
            {isOpen ? 'Done' : 'Change'}
          </button>
        ) : null}
        <button
          type="button"
          className={styles.key}
          aria-label={`Remove board ${nr + 1}`}
          onClick={() => onSet(nr, undefined)}
        >
          Remove
        </button>
      </span>
      {read.ok ? null : <FieldError id={`tally-${nr}-error`}>{read.says}</FieldError>}
    </li>
  );
});
