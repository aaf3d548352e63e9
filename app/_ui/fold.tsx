import type { ReactNode } from 'react';
import styles from '@/app/_ui/fold.module.css';

export interface FoldProps {
  title: string;
  /** What stands in it now, so that it need not be opened to know. */
  now?: string;
  open?: boolean;
  /** Of folds with one group only one is open at a time. */
  group?: string;
  children: ReactNode;
}

/** A part of a page that opens when it is wanted. Its title is a key as big as any other. */
export function Fold({ title, now, open, group, children }: FoldProps) {
  return (
    <details className={styles.fold} open={open} name={group}>
      <summary className={styles.line}>
        <span className={styles.words}>
          <span className={styles.title}>{title}</span>
          {now ? <span className={styles.now}>{now}</span> : null}
        </span>
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
