import type { ReactNode } from 'react';
import styles from '@/app/_ui/verdict/verdict.module.css';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VERDICT_WORDS, type VerdictWord } from '@/app/_ui/verdict/word';

export interface VerdictPanelProps {
  word: VerdictWord;
  /** One or two plain sentences, each on its own line: "Good to 12 Dec." "Needed on 19 Dec." */
  headline: readonly [string] | readonly [string, string];
  /** `full` for the answer of a screen, `small` where the verdict stands above something else to do. */
  size?: 'full' | 'small';
  /** The verdict came while the reader was looking: it stamps once and is said aloud, Stop at once. */
  fresh?: boolean;
  children?: ReactNode;
}

/** The answer, across the whole width: the mark, the word and the sentence that says why. */
export function VerdictPanel({ word, headline, size = 'full', fresh = true, children }: VerdictPanelProps) {
  const role = fresh ? (word === 'stop' ? 'alert' : 'status') : undefined;
  return (
    <div className={styles.panel} data-word={word} data-size={size} data-fresh={fresh || undefined} role={role}>
      <span className={styles.mark}>
        <VerdictMark word={word} size={size === 'full' ? 92 : 56} />
      </span>
      <div className={styles.says}>
        <h2 className={styles.word}>{VERDICT_WORDS[word]}</h2>
        <p className={styles.headline}>
          {headline.map((line) => (
            <span key={line}>{line} </span>
          ))}
        </p>
        {children}
      </div>
    </div>
  );
}
