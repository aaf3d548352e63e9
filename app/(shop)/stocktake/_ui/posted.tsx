import Link from 'next/link';
import type { ReactNode } from 'react';
import type { StocktakeHead } from '@/app/_server/stocktake/load-stocktake';
import type { PostedStocktake } from '@/app/_server/stocktake/post-stocktake';
import { Code } from '@/app/_ui/code';
import { LinkKey } from '@/app/_ui/keys';
import { showCode } from '@/app/_ui/scanner/show-code';
import { Section } from '@/app/_ui/section';
import { ReverseKey } from '@/app/(shop)/_parts/history/reverse-key';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { sayDelta } from '@/app/(shop)/stocktake/say-walk';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A stocktake that is closed: what was posted, what was not, and which jobs lost something by it. */
export function Posted({
  stocktake,
  posted,
  codes,
  when,
  prefer,
}: {
  stocktake: StocktakeHead;
  posted: PostedStocktake | null;
  codes: readonly string[];
  when: string;
  prefer: UnitSystem;
}) {
  const { closed, place } = stocktake;
  if (!closed) return null;
  const what = `the stocktake of ${place}`;
  return (
    <>
      <p>
        {closed.posted ? 'Posted' : 'Given up'} by {closed.by}, {when}.{' '}
        {posted ? (closed.why ? `Reason: ${closed.why}` : 'Nothing differed.') : 'Nothing of it was posted.'}
      </p>
      {posted && posted.broken.length > 0 ? (
        <Rows
          title="Promises that no longer hold"
          rows={posted.broken}
          says={({ jobId, job, amount, unit }) => (
            <>
              <Link href={`/jobs/${jobId}`}>{job}</Link> loses {printQuantity(amountOf(unit, amount), unit, { prefer })}
              .
            </>
          )}
        />
      ) : null}
      {posted && posted.overtaken.length > 0 ? (
        <Rows
          title="Left as the book has it: something changed meanwhile"
          rows={posted.overtaken}
          says={({ by }) =>
            `${by || 'Somebody'} moved, used or saw it while this was being compared. Nothing was written over.`
          }
        />
      ) : null}
      {posted && posted.done.length > 0 ? (
        <Rows
          title="Posted"
          rows={posted.done}
          says={({ choice, delta, unit }) =>
            choice === 'gone'
              ? `Written off: ${sayDelta(delta, unit, prefer)}`
              : choice === 'move'
                ? `Moved here${delta === 0 ? '' : `, ${sayDelta(delta, unit, prefer)}`}`
                : sayDelta(delta, unit, prefer)
          }
        />
      ) : null}
      {posted && posted.left.length > 0 ? (
        <Rows title="Left as the book has it" rows={posted.left} says={() => 'Decided so.'} />
      ) : null}
      {codes.length > 0 ? (
        <Section title="Codes that mean no thing here" aside={`${codes.length}`}>
          <ul className={styles.rows} aria-label="Codes that mean no thing here">
            {codes.map((code) => (
              <li key={code} className={styles.row}>
                <Code>{showCode(code)}</Code>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <Section title="Go on">
        <div className={styles.keys}>
          <LinkKey href={`/stocktake?place=${stocktake.placeLabel}`} variant="ghost">
            Walk {place} again
          </LinkKey>
          <LinkKey href={`/places/${stocktake.placeLabel}`} variant="ghost">
            Open {place}
          </LinkKey>
        </div>
        <p className={styles.soft}>
          Entry {closed.entryId}. Reversing it undoes all of it at once and takes the walk up again.
        </p>
        <ReverseKey entryId={closed.entryId} what={what} />
      </Section>
    </>
  );
}

function Rows<R extends { label: string; name: string }>({
  title,
  rows,
  says,
}: {
  title: string;
  rows: readonly R[];
  says: (row: R) => ReactNode;
}) {
  return (
    <Section title={title} aside={`${rows.length}`}>
      <ul className={styles.rows} aria-label={title}>
        {rows.map((row, nr) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: one thing can stand here for two jobs, and nothing moves
          <li key={`${row.label} ${nr}`} className={styles.row}>
            <div className={styles.what}>
              <Link href={thingHref(row.label)} className={styles.link}>
                {row.name}
              </Link>
              <Code>{printOwnLabel(row.label as OwnLabelCode)}</Code>
            </div>
            <p>{says(row)}</p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
