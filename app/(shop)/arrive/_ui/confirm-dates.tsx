import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { type Card, confirmDates, DATE_NAMES, DATE_WORDS } from '@/app/(shop)/arrive/card';

/** The dates a code gave, to be confirmed with one press by somebody who looks at the container. */
export function ConfirmDates({ card, onChange }: { card: Card; onChange: (card: Card) => void }) {
  const read = DATE_NAMES.filter((name) => card.dates[name].fromCode && !card.dates[name].confirmed);
  if (read.length === 0) return null;
  return (
    <div className={styles.confirm}>
      <p>Read from the label: confirm.</p>
      <dl>
        {read.map((name) => (
          <div key={name} className={styles.readDate}>
            <dt>{DATE_WORDS[name]}</dt>
            <dd>{card.dates[name].text}</dd>
          </div>
        ))}
      </dl>
      <Key variant="ghost" onClick={() => onChange(confirmDates(card))}>
        {read.length === 1 ? 'Yes, that is printed on it' : 'Yes, these are printed on it'}
      </Key>
    </div>
  );
}
