import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { sayAmount, sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is in hand: the product, its label and lot, what is left and where it stands. */
export function ContainerFacts({ line, units }: { line: ContainerLine; units: UnitSystem }) {
  const { unit } = line;
  return (
    <div className={styles.thing}>
      <div className={styles.thingWords}>
        <p className={styles.thingName}>{line.product}</p>
        <p className={styles.codes}>
          <Code>{printOwnLabel(line.label)}</Code>
          <span>
            {line.lotCode ? (
              <>
                lot <Code>{line.lotCode}</Code>
              </>
            ) : (
              'no lot printed'
            )}
          </span>
        </p>
        <p className={styles.soft}>
          {sayLeft(line.left, unit, units)} left of {sayAmount(line.size, unit, units)}
          {line.place ? `, ${line.place}` : ', no place given'}
        </p>
      </div>
    </div>
  );
}
