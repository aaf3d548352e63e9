import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { HowBody } from '@/app/(shop)/pieces/_ui/how';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { How } from '@/shared/wood/explained';

export interface Figure {
  term: string;
  value: string;
  /** The steps that led to it, the last one first. */
  how: How | readonly How[];
}

/** Computed numbers, each of which opens to how it was reckoned. */
export function FigureList({ figures, prefer }: { figures: readonly Figure[]; prefer: UnitSystem }) {
  return (
    <div className={styles.figures}>
      {figures.map(({ term, value, how }) => (
        <details key={term} className={styles.figure}>
          <summary>
            <span className={styles.term}>{term}</span>
            <b className={styles.whole}>{value}</b>
            <span className={styles.how}>How</span>
          </summary>
          <HowBody how={how} prefer={prefer} />
        </details>
      ))}
    </div>
  );
}
