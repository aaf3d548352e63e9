import type { ReactNode } from 'react';
import styles from '@/app/_ui/facts.module.css';

export interface Fact {
  term: string;
  value: ReactNode;
}

/** Facts as terms and values, for what does not read better as a sentence. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ term, value }) => (
        <div key={term} className={styles.fact}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
