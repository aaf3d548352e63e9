'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import { BECOMES, type BecomesWhat } from '@/app/(shop)/pieces/[label]/cut/become';

/** One piece that the cut would make, in words, and what it is to become. */
type PartRow = {
  size: string;
  /** Its part of the wood and of the cost. */
  share: string;
  as: BecomesWhat;
  isBelowHouse: boolean;
  promised: boolean;
};

export interface PartsListProps {
  rows: readonly PartRow[];
  /** "300 mm × 100 mm" */
  house: string;
  /** The job the old piece is promised to. */
  job: string | undefined;
  isSheet: boolean;
  onAs: (nr: number, as: BecomesWhat) => void;
  onPromised: (nr: number, promised: boolean) => void;
}

const WORDS: Record<BecomesWhat, string> = {
  slab: 'Slab',
  board: 'Board',
  sheet: 'Sheet',
  offcut: 'Offcut',
  scrap: 'Scrap',
};

/** What becomes of each piece: a label of its own, or scrap. */
export function PartsList({ rows, house, job, isSheet, onAs, onPromised }: PartsListProps) {
  const wanted = BECOMES.filter((as) => (isSheet ? as !== 'slab' && as !== 'board' : as !== 'sheet'));
  return (
    <ol className={styles.parts}>
      {rows.map((row, nr) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece is known by its number.
        <li key={nr} data-scrap={row.as === 'scrap' || undefined}>
          <p className={styles.partSize}>
            <span className={styles.partNumber}>{nr + 1}</span>
            <span>
              <b>{row.size}</b>
              <span className={styles.soft}>{row.share}</span>
            </span>
          </p>
          <ChoiceChips
            label={`Piece ${nr + 1} becomes`}
            hint={
              row.isBelowHouse
                ? `Smaller than the shop keeps (${house}): keep it as an offcut, or scrap it.`
                : undefined
            }
            options={wanted.map((value) => ({ value, label: WORDS[value] }))}
            value={row.as}
            onChange={(value) => onAs(nr, BECOMES.find((each) => each === value) ?? row.as)}
          />
          {job && row.as !== 'scrap' ? (
            <label className={styles.tick}>
              <input
                type="checkbox"
                checked={row.promised}
                onChange={(flip) => onPromised(nr, flip.currentTarget.checked)}
              />
              Piece {nr + 1} stays promised to {job}
            </label>
          ) : null}
        </li>
      ))}
    </ol>
  );
}
