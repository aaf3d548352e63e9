import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { Fold } from '@/app/_ui/fold';
import { LinkKey } from '@/app/_ui/keys';
import { RiverDrawing } from '@/app/_ui/slab/river-drawing';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import { FitDrawing } from '@/app/(shop)/on-hand/fits/_ui/fit-drawing';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type { FitRow } from '@/app/(shop)/on-hand/fits/fit-row';
import type { ShortRow } from '@/app/(shop)/on-hand/fits/fits-view';
import { pourHref } from '@/app/(shop)/on-hand/fits/pour-href';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printMoney } from '@/shared/units/print-money';

/** The pieces a top fits in, or nearly, drawn to one scale in the order a maker would take them. */
export function FitList({ rows, query, jobId }: { rows: readonly FitRow[]; query: string; jobId: number | undefined }) {
  const wholeMm = Math.max(
    ...rows.flatMap(({ views }) => views.map(({ outline }) => lengthOf(outline.ring) / 1000)),
    1,
  );
  return (
    <ol className={styles.list} aria-label="What it can be cut from">
      {rows.map((row) => (
        <li key={row.id} className={styles.answer}>
          <div className={styles.drawings}>
            {row.river ? (
              <RiverDrawing river={row.river} wholeMm={wholeMm} label={`The finished top: ${row.drawn}`} />
            ) : null}
            {row.views.map((view, nr) => (
              <FitDrawing
                // biome-ignore lint/suspicious/noArrayIndexKey: one piece may give both halves; they never change places.
                key={nr}
                view={view}
                words={row.views.length === 1 ? unbroken(row.words) : undefined}
                wholeMm={wholeMm}
                label={row.views.length === 1 ? row.drawn : `Part ${nr + 1} on ${view.label}. ${row.drawn}`}
              />
            ))}
            {row.views.length > 1 ? <p className={styles.under}>{unbroken(row.words)}</p> : null}
          </div>
          <div className={styles.facts}>
            {row.members.map(({ label, title }) => (
              <p key={label} className={styles.title}>
                <Link href={`/pieces/${label}`}>{title}</Link>
                <Code>{printOwnLabel(label as OwnLabelCode)}</Code>
              </p>
            ))}
            {row.facts.map((fact) => (
              <p key={fact}>{unbroken(fact)}</p>
            ))}
            {row.conditions.length > 0 ? (
              <ul className={styles.conditions}>
                {row.conditions.map((condition) => (
                  <li key={condition}>{unbroken(condition)}</li>
                ))}
              </ul>
            ) : null}
          </div>
          <div className={styles.standing}>
            <VerdictPill word={row.standing.word}>{row.standing.says}</VerdictPill>
            <p className={styles.price}>
              {row.cost ? printMoney(row.cost.minor, row.cost.currency) : <span>No price in the book</span>}
            </p>
            {row.costNote ? <p>{row.costNote}</p> : null}
            {row.waste ? <p>{row.waste}</p> : null}
            {row.pour ? (
              <div className={styles.pour}>
                <LinkKey variant="ghost" href={pourHref(query, row.pour, jobId)}>
                  {row.pour.of === 'river' ? 'Plan its pour' : 'Plan the pour of its fills'}
                </LinkKey>
              </div>
            ) : null}
          </div>
          <div className={styles.how}>
            <Fold title="How this was judged">
              <ul className={styles.reasons}>
                {[...row.why, ...row.how].map((sentence) => (
                  <li key={sentence}>{unbroken(sentence)}</li>
                ))}
              </ul>
            </Fold>
          </div>
        </li>
      ))}
    </ol>
  );
}

const lengthOf = (ring: readonly { readonly x: number }[]) =>
  Math.max(...ring.map(({ x }) => x)) - Math.min(...ring.map(({ x }) => x));

/** Keeps a number and its unit or fraction on one line. */
function unbroken(text: string): string {
  return text.replaceAll(/(\d) (?=(?:mm|in|%)(?!\w)|\d+\/\d)/g, '$1\u00a0');
}

/** Pieces in a line each: what cannot be used, or what comes after the drawings. */
export function ShortList({ rows }: { rows: readonly ShortRow[] }) {
  return (
    <ul className={styles.short}>
      {rows.map(({ label, title, says }) => (
        <li key={label}>
          <Link href={`/pieces/${label}`}>{title}</Link> <Code>{printOwnLabel(label as OwnLabelCode)}</Code>{' '}
          <span className={styles.soft}>{says}</span>
        </li>
      ))}
    </ul>
  );
}
