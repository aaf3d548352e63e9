import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { sayHow } from '@/app/(shop)/pieces/say-how';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { How } from '@/shared/wood/explained';

/** The formula of a number, what went into it and where both come from; of several steps each in turn. */
export function HowBody({ how, prefer }: { how: How | readonly How[]; prefer: UnitSystem }) {
  const steps = 'formula' in how ? [how] : how;
  return steps.map((step) => {
    const { written, says, inputs, sources } = sayHow(step, prefer);
    return (
      <div key={step.formula} className={styles.howBody}>
        <p className={styles.formula}>{written}</p>
        <p>{says}</p>
        <dl className={styles.inputs}>
          {inputs.map(({ term, value }) => (
            <div key={term} style={{ display: 'contents' }}>
              <dt>{term}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        {sources.map((source) => (
          <p key={source} className={styles.sources}>
            {source}
          </p>
        ))}
      </div>
    );
  });
}
