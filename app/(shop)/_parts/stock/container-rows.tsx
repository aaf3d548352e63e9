import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { Band } from '@/app/_ui/rule/band';
import { timeScale } from '@/app/_ui/rule/time-scale';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { ContainerRow } from '@/app/(shop)/_parts/stock/container-row';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** The stretch of time every ribbon of a list shows, so that they can be compared: a month back, a year and a half on. */
export const listScale = (today: CalendarDate) => timeScale(addDays(today, -30), addDays(today, 550));

/** Containers of one product, each with its verdict for a client's job today. The whole row goes to the container's page. */
export function ContainerRows({
  rows,
  today,
  label,
  named = false,
}: {
  rows: readonly ContainerRow[];
  today: CalendarDate;
  label: string;
  named?: boolean;
}) {
  const scale = listScale(today);
  const todayAt = `${scale.middleOf(today) * 100}%`;
  return (
    <ul className={styles.rows} aria-label={label}>
      {rows.map((row) => (
        <li key={row.stockId} className={styles.row} data-used-up={row.usedUp || undefined}>
          <span className={styles.label}>
            <Link href={`/containers/${row.label}`} className={styles.link}>
              <Code>{printOwnLabel(row.label as OwnLabelCode)}</Code>
            </Link>
            {named ? <span className={styles.named}>{row.product}</span> : null}
          </span>
          <span className={styles.lot}>
            {row.lot ? (
              <>
                Lot <Code>{row.lot}</Code>
              </>
            ) : (
              'No lot'
            )}
          </span>
          <span className={styles.left}>
            <b>{row.usedUp ? 'Used up' : row.left}</b> {row.usedUp ? '' : `of ${row.size}`}
          </span>
          <span className={styles.place}>{row.place ?? 'No place'}</span>
          <span className={styles.standing}>
            {row.usedUp ? null : <VerdictPill word={row.word} />}
            <span className={styles.limit}>{row.limit}</span>
          </span>
          {row.because && !row.usedUp ? <span className={styles.because}>{row.because}</span> : null}
          <span className={styles.lane} aria-hidden="true">
            {row.limits.length > 0 && !row.usedUp ? (
              <>
                <Band scale={scale} limits={row.limits} />
                <span className={styles.today} style={{ left: todayAt }} />
              </>
            ) : null}
          </span>
        </li>
      ))}
    </ul>
  );
}
