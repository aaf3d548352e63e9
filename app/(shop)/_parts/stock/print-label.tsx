import type { ReactNode } from 'react';
import { LinkKey } from '@/app/_ui/keys';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';

/** The way to the print of a thing's label, below what can be written about it. */
export function PrintLabel({ label, children }: { label: string; children: ReactNode }) {
  return (
    <div className={styles.keysRow}>
      <LinkKey variant="ghost" href={`/labels?codes=${label}`}>
        {children}
      </LinkKey>
    </div>
  );
}
