'use client';

import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/pieces/[label]/print/_ui/print.module.css';

/** Opens the device's own print window. */
export function PrintKey() {
  return (
    <div className={styles.key}>
      <Key onClick={() => window.print()}>Print this page</Key>
    </div>
  );
}
