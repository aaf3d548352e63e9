import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { ReleaseAllForm } from '@/app/(shop)/trace/_ui/release-all-form';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';
import type { HeldPress } from '@/app/(shop)/trace/held-presses';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

export interface HeldListProps {
  press: HeldPress;
  /** How much it holds in all, with what is not seen here. */
  count: number;
  /** What the list here is of: "trace", "lot". */
  of?: string;
}

/** What one press holds, why, and the way to release it: the lots first, for what is still to come of them. */
export function HeldList({ press: { entryId, why, reference, things }, count, of = 'trace' }: HeldListProps) {
  const lots = things.filter(({ kind }) => kind === 'lot');
  const others = things.filter(({ kind }) => kind !== 'lot');
  return (
    <div className={styles.held}>
      <p>
        <b>
          {things.length === 1 ? '1 thing is' : `${things.length} things are`} on hold by entry {entryId}
        </b>
        {reference ? `, for ${reference}` : ''}: {why}
      </p>
      <ul className={styles.labels} aria-label={`On hold by entry ${entryId}`}>
        {[...lots, ...others].map(({ key, kind, href, label, code, title }) => (
          <li key={key}>
            <Link href={href}>
              {kind === 'lot' ? (
                code ? (
                  <>
                    Lot <Code>{code}</Code>
                  </>
                ) : (
                  'Lot without a code'
                )
              ) : (
                <Code>{printOwnLabel((label ?? '') as OwnLabelCode)}</Code>
              )}
            </Link>{' '}
            {title}
          </li>
        ))}
      </ul>
      {lots.length > 0 ? (
        <p className={styles.soft}>
          {lots.length === 1 ? 'What comes in of the lot' : 'What comes in of these lots'} waits with them until they
          are released.
        </p>
      ) : null}
      {count > things.length ? (
        <p className={styles.soft}>
          {count - things.length} more that are not of this {of}.
        </p>
      ) : null}
      <ReleaseAllForm entryId={entryId} count={count} />
    </div>
  );
}
