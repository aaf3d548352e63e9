import styles from '@/app/_ui/rule/rule.module.css';
import { governingLimit, type ShelfLimit } from '@/app/_ui/rule/shelf';
import type { TimeScale } from '@/app/_ui/rule/time-scale';

const within = (at: number) => Math.min(1, Math.max(0, at));
const percent = (at: number) => `${at * 100}%`;

/** Shelf life on the rule: solid up to the limit that counts, a dashed outline after it, a notch for every other limit. */
export function Band({ scale, limits }: { scale: TimeScale; limits: readonly ShelfLimit[] }) {
  const limit = governingLimit(limits);
  const end = limit ? within(scale.endOf(limit.lastGoodDay)) : 0;
  const others = limits.filter((other) => other !== limit && scale.has(other.lastGoodDay));
  return (
    <div className={styles.band}>
      {end > 0 ? <span className={styles.good} style={{ width: percent(end) }} /> : null}
      {end < 1 ? (
        <span className={styles.past} data-known={limit ? true : undefined} style={{ left: percent(end) }} />
      ) : null}
      {others.map((other) => (
        <span
          key={`${other.lastGoodDay} ${other.label}`}
          className={styles.notch}
          data-over={scale.endOf(other.lastGoodDay) <= end || undefined}
          style={{ left: percent(scale.endOf(other.lastGoodDay)) }}
        />
      ))}
    </div>
  );
}
