import type { PromisedTin } from '@/app/_server/pours/promised-tins';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is promised to the job, and where it stands: fetched before anything is opened. */
export function ToFetch({ tins, units }: { tins: readonly PromisedTin[]; units: UnitSystem }) {
  if (tins.length === 0) return null;
  return (
    <section className={styles.fetch} aria-label="To fetch">
      <h2>To fetch</h2>
      <ul>
        {tins.map(({ part, label, amount, unit, place }) => (
          <li key={label}>
            <b>{part}</b> <span className={styles.code}>{printOwnLabel(label as OwnLabelCode)}</span>,{' '}
            {printQuantity(amountOf(unit, amount), unit, { prefer: units, rounding: 'down' })} of it
            {place ? `, ${place}` : ', in no place'}
          </li>
        ))}
      </ul>
    </section>
  );
}
