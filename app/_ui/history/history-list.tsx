import type { ReactNode } from 'react';
import styles from '@/app/_ui/history/history.module.css';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { VerdictWord } from '@/app/_ui/verdict/word';

export interface HistoryEntry {
  id: string;
  /** The moment for machines (ISO 8601) and in words. */
  when: { iso: string; words: string };
  who: string;
  /** What was written: "Took 0.66 kg for the rowan table, lift 2". */
  what: ReactNode;
  why?: ReactNode;
  /** What hangs on it: links to the things it moved, its photos. */
  below?: ReactNode;
  verdict?: { word: VerdictWord; words?: string };
  /** Set when another entry put this one right: "Reversed 3 Dec by Ada". The entry stays, struck through. */
  reversed?: ReactNode;
  /** The key that reverses it. */
  action?: ReactNode;
}

/** Entries of the book, newest first. Nothing is ever taken away from it: what was put right is struck through and says so. */
export function HistoryList({ entries, label }: { entries: readonly HistoryEntry[]; label: string }) {
  return (
    <ol className={styles.list} aria-label={label}>
      {entries.map(({ id, when, who, what, why, below, verdict, reversed, action }) => (
        <li key={id} className={styles.entry}>
          <p className={styles.when}>
            <time dateTime={when.iso}>{when.words}</time>
            <span>{who}</span>
          </p>
          <div className={styles.body}>
            <p className={styles.what}>{reversed ? <del>{what}</del> : what}</p>
            {why ? <p className={styles.why}>{why}</p> : null}
            {verdict ? (
              <p>
                <VerdictPill word={verdict.word}>{verdict.words}</VerdictPill>
              </p>
            ) : null}
            {below}
            {reversed ? <p className={styles.why}>{reversed}</p> : null}
          </div>
          {action ? <div className={styles.action}>{action}</div> : null}
        </li>
      ))}
    </ol>
  );
}
