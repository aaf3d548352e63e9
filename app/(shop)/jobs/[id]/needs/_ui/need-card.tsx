import Link from 'next/link';
import type { ReactNode } from 'react';
import { Code } from '@/app/_ui/code';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import type { NeedView } from '@/app/(shop)/jobs/[id]/needs/need-view';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** One need: its bar, where each part of it is, what to buy, and what it costs. */
export function NeedCard({ need, children }: { need: NeedView; children?: ReactNode }) {
  const bar = need.rows.filter((row) => row.kind !== 'elsewhere' && row.kind !== 'failing');
  return (
    <article className={styles.card} aria-labelledby={`need-${need.id}`} data-word={need.word}>
      <header className={styles.head}>
        <h2 id={`need-${need.id}`} className={styles.name}>
          <b className={styles.amount}>{need.amount}</b> {need.name}
        </h2>
        <p className={styles.state} data-word={need.word}>
          {need.state}
        </p>
      </header>
      {need.forWhat.map((words) => (
        <p key={words} className={styles.forWhat}>
          {words}
        </p>
      ))}
      {need.size ? <p className={styles.forWhat}>{need.size}</p> : null}
      {need.notes.map((note) => (
        <p key={note} className={styles.note}>
          {note}
        </p>
      ))}
      <div className={styles.bar} aria-hidden="true">
        {bar.map((row) => (
          <span key={row.kind} className={styles.tint} data-kind={row.kind} style={{ flexGrow: row.share }} />
        ))}
      </div>
      <dl className={styles.rows}>
        {need.rows.map((row) => (
          <div key={row.kind} className={styles.row}>
            <dt>
              <span className={`${styles.swatch} ${styles.tint}`} data-kind={row.kind} aria-hidden="true" />
              {row.term}
            </dt>
            <dd>
              <b>{row.amount}</b>
              {row.says ? <span className={styles.says}>{row.says}</span> : null}
              {row.parts.length ? (
                <ul className={styles.parts}>
                  {row.parts.map((part) => (
                    <li key={part.label}>
                      <Link href={thingHref(part.label)}>
                        <Code>{printOwnLabel(part.label as OwnLabelCode)}</Code>
                      </Link>
                      {part.words ? <span>{part.words}</span> : null}
                    </li>
                  ))}
                </ul>
              ) : null}
            </dd>
          </div>
        ))}
      </dl>
      {need.buy ? (
        <div className={styles.buy}>
          <p>
            <b>Buy {need.buy.what}.</b>
          </p>
          {need.buy.life ? <p>{need.buy.life}</p> : null}
          <p>{need.buy.price}</p>
        </div>
      ) : null}
      {need.mixed ? <p className={styles.mind}>No lot alone is enough: lots would meet on one surface.</p> : null}
      {need.uncounted.length ? (
        <p className={styles.mind}>
          Not counted, because the product has no density:{' '}
          {need.uncounted.map((label) => printOwnLabel(label as OwnLabelCode)).join(', ')}.
        </p>
      ) : null}
      {need.cost.length ? (
        <dl className={styles.cost}>
          {need.cost.map(({ term, value }) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd className={term === 'At risk' ? styles.risky : styles.costs}>{value}</dd>
            </div>
          ))}
        </dl>
      ) : null}
      {children}
    </article>
  );
}
