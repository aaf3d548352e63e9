import type { ReactNode } from 'react';
import styles from '@/app/_ui/verdict/verdict.module.css';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VERDICT_WORDS, type VerdictWord } from '@/app/_ui/verdict/word';

export interface Reason {
  id: string;
  word: VerdictWord;
  /** The reason as a plain sentence. */
  sentence: ReactNode;
  /** What to do about it. */
  toDo?: ReactNode;
}

/** Why the verdict is what it is, the weightiest reason first. */
export function ReasonList({ reasons, label = 'Reasons' }: { reasons: readonly Reason[]; label?: string }) {
  return (
    <ul className={styles.reasons} aria-label={label}>
      {reasons.map(({ id, word, sentence, toDo }) => (
        <li key={id} className={styles.reason}>
          <VerdictMark word={word} size={24} />
          <div>
            <p>
              <span className="unseen">{VERDICT_WORDS[word]}: </span>
              {sentence}
            </p>
            {toDo ? <p className={styles.toDo}>{toDo}</p> : null}
          </div>
        </li>
      ))}
    </ul>
  );
}
