import Link from 'next/link';
import type { ReactNode } from 'react';
import { Code } from '@/app/_ui/code';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { VerdictWord } from '@/app/_ui/verdict/word';
import styles from '@/app/(shop)/watch/_ui/watch.module.css';

export interface WatchRow {
  id: string;
  href: string;
  name: string;
  /** Its label, or its lot and how many. */
  label: string;
  place: string | null;
  word: VerdictWord;
  /** The words of the verdict: "on hold". */
  says?: string;
  why: string;
  toDo?: ReactNode;
}

/** Things that need somebody, each with why and the one thing to do. The whole row goes where that is done. */
export function WatchRows({ rows, label }: { rows: readonly WatchRow[]; label: string }) {
  return (
    <ul className={styles.rows} aria-label={label}>
      {rows.map(({ id, href, name, label: code, place, word, says, why, toDo }) => (
        <li key={id} className={styles.row}>
          <div className={styles.what}>
            <Link href={href} className={styles.link}>
              {name}
            </Link>
            <span className={styles.soft}>
              <Code>{code}</Code>
              {place ? `, ${place}` : null}
            </span>
          </div>
          <div className={styles.pill}>
            <VerdictPill word={word}>{says}</VerdictPill>
          </div>
          <div className={styles.why}>
            <p>{why}</p>
            {toDo ? <p className={styles.soft}>{toDo}</p> : null}
          </div>
        </li>
      ))}
    </ul>
  );
}
