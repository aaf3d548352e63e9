import styles from '@/app/_ui/rule/rule.module.css';
import { type RuleTicks, ruleTicks } from '@/app/_ui/rule/rule-ticks';
import type { TimeScale } from '@/app/_ui/rule/time-scale';

const GRADES = [
  { name: 'narrow', width: 290 },
  { name: 'middle', width: 540 },
  { name: 'wide', width: 860 },
] as const;

const percent = (at: number) => `${at * 100}%`;
const strokes = (places: readonly number[], to: number) =>
  places.map((at) => `M${(at * 1000).toFixed(2)} 0V${to}`).join('');

function Edge({ ticks, name }: { ticks: RuleTicks; name: string }) {
  return (
    <div className={styles.edge} data-grade={name}>
      <svg
        className={styles.ticks}
        viewBox="0 0 1000 24"
        preserveAspectRatio="none"
        aria-hidden="true"
        focusable="false"
      >
        <path d={strokes(ticks.short, 6)} />
        <path d={strokes(ticks.long, 11)} />
        <path
          d={strokes(
            ticks.labels.map(({ at }) => at),
            24,
          )}
        />
      </svg>
      {ticks.labels.map(({ day, at, words }) => (
        <span key={day} className={styles.words} style={{ left: percent(at) }}>
          {words}
        </span>
      ))}
    </div>
  );
}

/** The maker's rule, drawn for three widths of the box it stands in; the style sheet shows the one that fits. Silent to
 * screen readers: whoever draws on the rule says in words what it shows. */
export function Rule({ scale }: { scale: TimeScale }) {
  return (
    <div className={styles.rule} aria-hidden="true">
      {GRADES.map(({ name, width }) => (
        <Edge key={name} name={name} ticks={ruleTicks(scale, width)} />
      ))}
    </div>
  );
}
