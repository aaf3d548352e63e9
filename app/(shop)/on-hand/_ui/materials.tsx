import Link from 'next/link';
import { Rule } from '@/app/_ui/rule/rule';
import type { ContainerRow } from '@/app/(shop)/_parts/stock/container-row';
import { ContainerRows, listScale } from '@/app/(shop)/_parts/stock/container-rows';
import styles from '@/app/(shop)/on-hand/_ui/on-hand.module.css';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** Containers under the products they are of; all ribbons share the rule at the top. */
export function Materials({ rows, today }: { rows: readonly ContainerRow[]; today: CalendarDate }) {
  const groups = new Map<number, ContainerRow[]>();
  for (const row of rows) {
    const group = groups.get(row.productId);
    if (group) group.push(row);
    else groups.set(row.productId, [row]);
  }
  return (
    <div className={styles.materials}>
      <div className={styles.rule} aria-hidden="true">
        <div className={styles.ruleLane}>
          <Rule scale={listScale(today)} />
        </div>
      </div>
      {[...groups.values()].map((group) => {
        const [head] = group;
        if (!head) return null;
        return (
          <section key={head.productId} className={styles.group}>
            <h2 className={styles.product}>
              <Link href={`/products/${head.productId}`}>{head.product}</Link>
              {head.maker ? <span>{head.maker}</span> : null}
            </h2>
            <ContainerRows rows={group} today={today} label={head.product} />
          </section>
        );
      })}
    </div>
  );
}
