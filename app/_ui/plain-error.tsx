import type { ReactNode } from 'react';
import styles from '@/app/_ui/plain-error.module.css';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';

export interface PlainErrorProps {
  /** What happened: "The entry did not reach the book." */
  happened: string;
  /** What was kept: "What you typed is still here." */
  kept: string;
  /** What to do now. */
  toDo: ReactNode;
  /** A reference to look for in the log. */
  reference?: string;
  /** Keys to go on with. */
  children?: ReactNode;
}

/** An error in three plain sentences. */
export function PlainError({ happened, kept, toDo, reference, children }: PlainErrorProps) {
  return (
    <div role="alert" className={styles.error}>
      <p className={styles.happened}>
        <VerdictMark word="stop" size={24} />
        <span>{happened}</span>
      </p>
      <p>{kept}</p>
      <p>{toDo}</p>
      {reference ? <p className={styles.reference}>Reference {reference}</p> : null}
      {children ? <div className={styles.keys}>{children}</div> : null}
    </div>
  );
}
