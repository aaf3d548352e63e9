import type { ReactNode } from 'react';
import styles from '@/app/_ui/empty.module.css';

/** Stands where a list has nothing: what would be here, and how to get it here. `children` holds the key that does it. */
export function Empty({ title, toDo, children }: { title: string; toDo: ReactNode; children?: ReactNode }) {
  return (
    <div className={styles.empty}>
      <p className={styles.title}>{title}</p>
      <p className={styles.toDo}>{toDo}</p>
      {children ? <div className={styles.keys}>{children}</div> : null}
    </div>
  );
}
