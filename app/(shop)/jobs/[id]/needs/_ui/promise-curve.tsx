import { Fold } from '@/app/_ui/fold';
import { Rule } from '@/app/_ui/rule/rule';
import { timeScale } from '@/app/_ui/rule/time-scale';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { type CurveView, heightOf } from '@/app/(shop)/jobs/[id]/needs/curve-view';

/** How much of a material can be promised, day by day, drawn as steps over what is there, with the days it is needed. */
export function PromiseCurveDrawing({ curve }: { curve: CurveView }) {
  const scale = timeScale(curve.from, curve.to);
  const height = heightOf(curve);
  const points = curve.steps.map((step, nr) => {
    const next = curve.steps[nr + 1];
    return {
      start: scale.startOf(step.from) * 1000,
      end: next ? scale.startOf(next.from) * 1000 : 1000,
      free: height(step.free),
      good: height(step.good),
    };
  });
  const steps = (of: 'free' | 'good') =>
    points
      .map((point, nr) => `${nr === 0 ? `M${point.start}` : `L${point.start}`} ${point[of]}L${point.end} ${point[of]}`)
      .join('');
  return (
    <figure className={styles.curve}>
      <div className={styles.plot} role="img" aria-label={curve.says}>
        <span className={styles.most} aria-hidden="true">
          {curve.most}
        </span>
        <svg viewBox="0 0 1000 100" preserveAspectRatio="none" aria-hidden="true" focusable="false">
          <path className={styles.good} d={`${steps('good')}L1000 100L0 100Z`} />
          <path className={styles.freeArea} d={`${steps('free')}L1000 100L0 100Z`} />
          <path className={styles.freeLine} d={steps('free')} />
        </svg>
        {curve.asks.map((ask) => (
          <span
            key={`${ask.on} ${ask.amount}`}
            className={styles.ask}
            data-met={ask.met || undefined}
            style={{ left: `${scale.middleOf(ask.on) * 100}%`, top: `${height(ask.value)}%` }}
          />
        ))}
      </div>
      <Rule scale={scale} />
      <figcaption className={styles.caption}>
        <ul className={styles.asks}>
          {curve.asks.map((ask) => (
            <li key={`${ask.on} ${ask.amount}`}>
              <span className={styles.askMark} data-met={ask.met || undefined} aria-hidden="true" />
              {ask.says}
            </li>
          ))}
        </ul>
      </figcaption>
      <Fold title="Day by day" now={curve.now}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keyboard too. */}
        <section className={styles.tableBox} aria-label={`${curve.name}, day by day`} tabIndex={0}>
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">From</th>
                <th scope="col">Free</th>
                <th scope="col">Promised</th>
                <th scope="col">Kept</th>
                <th scope="col">Good in all</th>
              </tr>
            </thead>
            <tbody>
              {curve.table.map((row) => (
                <tr key={row.from}>
                  <th scope="row">
                    {row.from}
                    <span className={styles.why}>{row.why}</span>
                  </th>
                  <td>{row.free}</td>
                  <td>{row.promised}</td>
                  <td>{row.kept}</td>
                  <td>{row.good}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <p className={styles.soft}>
          Free is what can be promised for that day so that no other agreed job goes shorter for it. Kept is what those
          jobs need and nobody promised them yet.
        </p>
        {curve.others.length ? <p className={styles.soft}>Kept for {curve.others.join('; ')}.</p> : null}
      </Fold>
    </figure>
  );
}
