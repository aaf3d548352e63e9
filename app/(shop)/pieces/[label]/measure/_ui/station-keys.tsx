import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';
import { pressed, STATION_KEYS } from '@/app/(shop)/pieces/[label]/measure/pressed';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface StationKeysProps {
  /** What the field holds now. */
  text: string;
  prefer: UnitSystem;
  onChange: (text: string) => void;
  onNext: () => void;
}

/** What a phone's number keys lack, under the field that is being typed in. The field keeps the focus. */
export function StationKeys({ text, prefer, onChange, onNext }: StationKeysProps) {
  return (
    <div className={styles.keys} data-prefer={prefer} onPointerDown={(down) => down.preventDefault()}>
      {STATION_KEYS[prefer].map(({ key, says }) => (
        <button key={key} type="button" tabIndex={-1} aria-label={says} onClick={() => onChange(pressed(text, key))}>
          {key}
        </button>
      ))}
      <button type="button" tabIndex={-1} className={styles.next} onClick={onNext}>
        Next
      </button>
    </div>
  );
}
