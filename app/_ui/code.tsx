import type { ReactNode } from 'react';
import styles from '@/app/_ui/code.module.css';

/** A label, lot or number as it is printed, in the face where zero and O, 1 and l differ. Long ones break anywhere. */
export function Code({ children }: { children: ReactNode }) {
  return <span className={styles.code}>{children}</span>;
}
