import { sayCode } from './say-code';
import type { Scan } from './scan';
import styles from './scan-bar.module.css';

/** A scan on a page on which something is being typed: it opens nothing until somebody says so. */
export function ScanBar({ scan, onOpen, onStay }: { scan: Scan; onOpen: () => void; onStay: () => void }) {
  return (
    <div className={styles.bar}>
      <p role="alert" className={styles.words}>
        Scanned <span className={styles.code}>{sayCode(scan.text)}</span>. What you typed here is not in the book yet.
      </p>
      <div className={styles.keys}>
        <button type="button" className={styles.key} onClick={onOpen}>
          Open it
        </button>
        <button type="button" className={styles.key} onClick={onStay}>
          Go on here
        </button>
      </div>
    </div>
  );
}
