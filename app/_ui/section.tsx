import type { ReactNode } from 'react';
import styles from '@/app/_ui/section.module.css';

/** A part of a page under a line. `aside` stands at the right of its title. Without a title it is only the line and the room. */
export function Section({ title, aside, children }: { title?: ReactNode; aside?: ReactNode; children: ReactNode }) {
  return (
    <section className={styles.section}>
      {title ? (
        <div className={styles.row}>
          <h2 className={styles.title}>{title}</h2>
          {aside ? <div className={styles.aside}>{aside}</div> : null}
        </div>
      ) : null}
      {children}
    </section>
  );
}
