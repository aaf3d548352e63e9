import Link from 'next/link';
import type { ReactNode } from 'react';
import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import { Code } from '@/app/_ui/code';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { sayThing } from '@/app/(shop)/stocktake/say-walk';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Things of a walk as rows: what each is, what the walk says of it, and what can be done. */
export function WalkRows({
  things,
  prefer,
  label,
  most = 60,
  quiet = false,
  beside,
}: {
  things: readonly WalkThing[];
  prefer: UnitSystem;
  label: string;
  most?: number;
  /** Without the verdict's pill: nothing is wrong with them yet. */
  quiet?: boolean;
  beside?: (thing: WalkThing) => ReactNode;
}) {
  return (
    <>
      <ul className={styles.rows} aria-label={label}>
        {things.slice(0, most).map((thing) => {
          const { word, says, why } = sayThing(thing, prefer);
          return (
            <li key={thing.stockId} className={styles.row}>
              <div className={styles.what}>
                <Link href={thingHref(thing.label)} className={styles.link}>
                  {thing.name}
                </Link>
                <Code>{printOwnLabel(thing.label as OwnLabelCode)}</Code>
              </div>
              <div>
                {quiet ? null : <VerdictPill word={word}>{says}</VerdictPill>}
                <p className={styles.soft}>{why}</p>
              </div>
              {beside ? <div className={styles.beside}>{beside(thing)}</div> : null}
            </li>
          );
        })}
      </ul>
      {things.length > most ? (
        <p className={styles.soft}>
          {most} of {things.length} are shown.
        </p>
      ) : null}
    </>
  );
}
