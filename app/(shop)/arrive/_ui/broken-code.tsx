import { showCode } from '@/app/_ui/scanner/show-code';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { sayMalformed } from '@/shared/scan-codes/say-malformed';
import type { Malformed } from '@/shared/scan-codes/scan-reading';

/** What was read, with the character marked at which it breaks, and what it nearly was. */
export function BrokenCode({ text, malformed }: { text: string; malformed: Malformed }) {
  const { what, todo } = sayMalformed(malformed);
  const { at } = malformed;
  const character = text.charAt(at);
  return (
    <>
      {text && malformed.code !== 'too-long' ? (
        <p className={styles.code}>
          {showCode(text.slice(0, at))}
          <mark>
            <span className="unseen">here: </span>
            {character ? showCode(character) : '…'}
          </mark>
          {showCode(text.slice(at + 1))}
        </p>
      ) : null}
      <p className={styles.plain}>{what}</p>
      <p className={styles.plain}>{todo}</p>
    </>
  );
}
