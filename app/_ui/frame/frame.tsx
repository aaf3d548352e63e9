import type { ReactNode } from 'react';
import styles from '@/app/_ui/frame/frame.module.css';
import { Places } from '@/app/_ui/frame/places';

/** The five places along the bottom (phone) or down the side (wide), and the page beside them. */
export function Frame({ children }: { children: ReactNode }) {
  return (
    <div className={styles.frame}>
      <a className={styles.skip} href="#page">
        Skip to the page
      </a>
      <Places />
      <main id="page" tabIndex={-1} className={styles.page}>
        {children}
      </main>
    </div>
  );
}
