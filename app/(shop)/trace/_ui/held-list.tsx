import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { ReleaseAllForm } from '@/app/(shop)/trace/_ui/release-all-form';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';
import type { HeldPress } from '@/app/(shop)/trace/held-presses';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** What one press holds (`count` in all, with what is in other traces only), why, and the way to release it. */
export function HeldList({ press: { entryId, why, reference, things }, count }: { press: HeldPress; count: number }) {
  return (
    <div className={styles.held}>
      <p>
        <b>
          {things.length === 1 ? '1 thing is' : `${things.length} things are`} on hold by entry {entryId}
        </b>
        {reference ? `, for ${reference}` : ''}: {why}
      </p>
      <ul className={styles.labels} aria-label={`On hold by entry ${entryId}`}>
        {things.map(({ key, href, label, title }) => (
          <li key={key}>
            <Link href={href}>
              <Code>{printOwnLabel((label ?? '') as OwnLabelCode)}</Code>
            </Link>{' '}
            {title}
          </li>
        ))}
      </ul>
      {count > things.length ? (
        <p className={styles.soft}>{count - things.length} more that are not in this trace.</p>
      ) : null}
      <ReleaseAllForm entryId={entryId} count={count} />
    </div>
  );
}
