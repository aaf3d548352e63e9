'use client';

import styles from '@/app/_ui/labels/labels.module.css';
import type { SheetFormat } from '@/shared/labels/label-formats';

export interface SheetStartProps {
  format: SheetFormat;
  /** First position to print, from 1 along the rows. */
  start: number;
  /** How many labels the print holds. */
  count: number;
  onStart: (position: number) => void;
}

/** The sheet, drawn to be tapped: the first label that is still on it. What will be printed is filled with ink. */
export function SheetStart({ format, start, count, onStart }: SheetStartProps) {
  const positions = Array.from({ length: format.columns * format.rows }, (_, index) => index + 1);
  return (
    <fieldset className={styles.start}>
      <legend className={styles.legend}>First label still on the sheet</legend>
      <p className={styles.soft}>Tap it. The ones before it stay blank, so a part-used sheet is used up.</p>
      <div className={styles.sheet} style={{ gridTemplateColumns: `repeat(${format.columns}, 1fr)` }}>
        {positions.map((position) => (
          <label key={position} className={styles.cell} data-state={stateOf(position, start, count)}>
            <input
              type="radio"
              className="unseen"
              name="start"
              value={position}
              checked={position === start}
              onChange={() => onStart(position)}
            />
            <span className="unseen">Position </span>
            {position}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function stateOf(position: number, start: number, count: number): 'used' | 'printed' | 'left' {
  if (position < start) return 'used';
  return position < start + count ? 'printed' : 'left';
}
