import type { SampleLine } from '@/app/_server/samples/list-samples';
import { LinkKey } from '@/app/_ui/keys';
import styles from '@/app/(shop)/samples/_ui/samples.module.css';
import { FAULT_OF } from '@/app/(shop)/samples/look-words';

export interface SampleWaysProps {
  sample: Pick<SampleLine, 'id' | 'liftId' | 'looks'>;
  /** With the way to its trace; left out on the trace itself. */
  traced?: boolean;
}

/** Where a sample leads: to its trace, and from a bad look to a fault of the lift it was kept of. */
export function SampleWays({ sample: { id, liftId, looks }, traced = false }: SampleWaysProps) {
  const [newest] = looks;
  const isBad = newest !== undefined && FAULT_OF[newest.result] !== null;
  return (
    <>
      {isBad ? (
        <p>
          {liftId === null
            ? 'It is of no lift in the book. Its trace leads to the lots it was mixed of, and puts them on hold.'
            : 'What it shows, the pour may have too. Write it down as a fault of its lift, and trace where its lots went.'}
        </p>
      ) : null}
      <div className={styles.ways}>
        {traced ? (
          <LinkKey variant="ghost" href={`/trace/sample/${id}`}>
            Trace it
          </LinkKey>
        ) : null}
        {isBad && liftId !== null ? (
          <LinkKey variant="ghost" href={`/faults/new?sample=${id}`}>
            Write a fault down
          </LinkKey>
        ) : null}
      </div>
    </>
  );
}
