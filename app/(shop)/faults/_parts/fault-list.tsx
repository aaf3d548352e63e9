import Link from 'next/link';
import type { BookHead } from '@/app/_server/book/read-book';
import type { FaultLine } from '@/app/_server/faults/faults-of';
import { Code } from '@/app/_ui/code';
import { LinkKey } from '@/app/_ui/keys';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/faults/_ui/faults.module.css';
import { SettleFold } from '@/app/(shop)/faults/_ui/settle-fold';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import { sayDate } from '@/shared/calendar/say-date';
import { sayFault } from '@/shared/faults/fault-kinds';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLength } from '@/shared/units/print-length';

export interface FaultListProps {
  faults: readonly FaultLine[];
  head: Pick<BookHead, 'today' | 'dateOrder' | 'units'>;
  /** With the way to the trace of each; left out on the trace itself. */
  traced?: boolean;
}

/** Faults as they were found, open ones first: where, how deep, and what was done. */
export function FaultList({ faults, head, traced = false }: FaultListProps) {
  const { today, dateOrder: order, units: prefer } = head;
  return (
    <ul className={styles.list} aria-label="Faults">
      {faults.map((fault) => (
        <li key={fault.id}>
          <div className={styles.head}>
            <b>{sayFault(fault.kind)}</b>
            <span className={fault.settled ? styles.soft : styles.open}>{fault.settled ? 'Settled' : 'Open'}</span>
          </div>
          <p>
            {[
              fault.lift
                ? `${fault.lift.pour}, ${fault.lift.nr === 0 ? 'seal coat' : `lift ${fault.lift.nr}`}`
                : fault.pour,
              fault.place ? `at ${writePoint(fault.place, prefer)}` : null,
              fault.depth ? `${printLength(fault.depth, { prefer, denominator: 64, style: 'inches' })} deep` : null,
            ]
              .filter(Boolean)
              .join(', ')}{' '}
            {fault.label ? (
              <Link href={thingHref(fault.label)}>
                <Code>{printOwnLabel(fault.label as OwnLabelCode)}</Code>
              </Link>
            ) : null}
          </p>
          {fault.note ? <p>{fault.note}</p> : null}
          {fault.photo ? (
            <a className={styles.photo} href={`/photos/${fault.photo}`}>
              {/* biome-ignore lint/performance/noImgElement: kept photos are served as they are. */}
              <img src={`/photos/${fault.photo}`} alt={`${sayFault(fault.kind)}, as it was found`} loading="lazy" />
            </a>
          ) : null}
          <p className={styles.soft}>
            Found {sayDate(fault.foundOn, { order, today })} by {fault.who}
            {fault.settled ? `. Settled by ${fault.settled.who}: ${fault.settled.how}` : ''}
          </p>
          {fault.settled ? null : <SettleFold faultId={fault.id} />}
          {traced ? (
            <div className={styles.keys}>
              <LinkKey variant="ghost" href={`/trace/fault/${fault.id}`}>
                Trace it
              </LinkKey>
            </div>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
