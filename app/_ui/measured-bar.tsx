'use client';

import type { ReactNode } from 'react';
import styles from '@/app/_ui/keys.module.css';
import { useRoom } from '@/app/_ui/use-room';

/** The bar itself, which tells the page how tall it is. */
export function MeasuredBar({ children }: { children: ReactNode }) {
  return (
    <div ref={useRoom('--keys')} className={styles.bar}>
      {children}
    </div>
  );
}
