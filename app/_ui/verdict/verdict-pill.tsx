import type { ReactNode } from 'react';
import styles from '@/app/_ui/verdict/verdict.module.css';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VERDICT_WORDS, type VerdictWord } from '@/app/_ui/verdict/word';

/** A verdict in a list: the mark and its word, or other words that say the same ("promised to 8 Dec"). */
export function VerdictPill({ word, children }: { word: VerdictWord; children?: ReactNode }) {
  return (
    <span className={styles.pill} data-word={word}>
      <VerdictMark word={word} size={18} />
      <span>
        {children ? <span className="unseen">{VERDICT_WORDS[word]}: </span> : null}
        {children ?? VERDICT_WORDS[word]}
      </span>
    </span>
  );
}
