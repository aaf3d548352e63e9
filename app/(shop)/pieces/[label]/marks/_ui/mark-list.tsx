import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/pieces/[label]/marks/_ui/marks.module.css';
import { sayMarks } from '@/app/(shop)/pieces/[label]/marks/say-marks';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MarkListProps {
  marks: PieceMarks;
  prefer: UnitSystem;
  /** Numbers of those that no longer lie on the wood as it is measured now. */
  off?: readonly number[];
  pending?: boolean;
  /** Takes one off, or opens it to be changed; without them the list is only read. */
  onTakeOff?: (id: number) => void;
  onChange?: (id: number) => void;
}

/** The marks of a piece in words, in the order they were made. */
export function MarkList({ marks, prefer, off = [], pending, onTakeOff, onChange }: MarkListProps) {
  const said = sayMarks(marks, prefer);
  if (said.length === 0) return <p className={styles.soft}>Nothing is marked on it.</p>;
  return (
    <ul className={styles.list}>
      {said.map(({ id, title, where, note }) => (
        <li key={id}>
          <div>
            <b>{title}</b>
            <p className={styles.soft}>{where}</p>
            {note ? <p>{note}</p> : null}
            {off.includes(id) ? (
              <p className={styles.off}>It no longer lies on the wood as measured: move it, or take it off.</p>
            ) : null}
          </div>
          {onTakeOff && onChange ? (
            <div className={styles.markKeys}>
              <Key variant="ghost" onClick={() => onChange(id)} aria-label={`Change: ${title}, ${where}`}>
                Change
              </Key>
              <Key
                variant="ghost"
                pending={pending}
                onClick={() => onTakeOff(id)}
                aria-label={`Take off: ${title}, ${where}`}
              >
                Take off
              </Key>
            </div>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
