import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { type LiftState, STATE_WORDS, sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

export type DrawnLift = {
  nr: number;
  depth: Nanometres;
  /** `Thu 26 Nov` */
  day: string;
  state: LiftState;
};

const WIDTH = 360;
const WALL = 26;
const LEAST = 42;
const TALLEST = 640;

/** A pour as a section through it, its lifts to scale from the bottom up, each with its depth and its day. */
export function LiftsDrawing({ lifts, units }: { lifts: readonly DrawnLift[]; units: UnitSystem }) {
  const layers = lifts.filter(({ nr }) => nr > 0);
  const seal = lifts.find(({ nr }) => nr === 0);
  const whole = layers.reduce((sum, { depth }) => sum + depth, 0);
  if (whole === 0) return null;
  const thinnest = Math.min(...layers.map(({ depth }) => depth));
  const height = Math.min(TALLEST, Math.max(layers.length * LEAST, (whole / thinnest) * LEAST, 120));
  const print = (depth: number) => printLength(depth as Nanometres, { prefer: units });
  const right = WIDTH - WALL;
  let top = height;
  const drawn = layers.map((lift) => {
    const tall = (lift.depth / whole) * height;
    top -= tall;
    return { ...lift, top, tall };
  });
  const said = lifts
    .map(
      ({ nr, depth, day, state }) =>
        `${sayLift(nr)}${nr > 0 ? `, ${print(depth)}` : ''}, ${day}, ${STATE_WORDS[state]}`,
    )
    .join('; ');
  return (
    <div
      className={styles.drawing}
      role="img"
      aria-label={`A section through the pour, ${print(whole)} deep. ${said}.`}
    >
      <svg
        viewBox={`0 -8 ${WIDTH} ${height + WALL + 8}`}
        className={styles.section}
        aria-hidden="true"
        focusable="false"
      >
        <path className={styles.wood} d={`M0 -8h${WALL}V${height}H${right}V-8h${WALL}V${height + WALL}H0z`} />
        {drawn.map(({ nr, depth, day, state, top: y, tall }) => (
          <g key={nr} data-state={state}>
            <rect className={styles.layer} x={WALL} y={y} width={right - WALL} height={tall} />
            <text x={WALL + 12} y={y + tall / 2 + (tall >= LEAST * 0.9 ? -4 : 4)} className={styles.liftName}>
              {sayLift(nr)}
              {tall >= LEAST * 0.9 ? '' : ` · ${print(depth)} · ${day}`}
            </text>
            {tall >= LEAST * 0.9 ? (
              <text x={WALL + 12} y={y + tall / 2 + 13} className={styles.liftWords}>
                {day} · {STATE_WORDS[state]}
              </text>
            ) : null}
            {tall >= LEAST * 0.9 ? (
              <text x={right - 10} y={y + tall / 2 + 5} className={styles.liftDepth} textAnchor="end">
                {print(depth)}
              </text>
            ) : null}
          </g>
        ))}
        {seal ? <path className={styles.seal} d={`M${WALL} -8V${height}H${right}V-8`} /> : null}
      </svg>
      <p className={styles.under}>
        {print(whole)} deep in {layers.length} {layers.length === 1 ? 'lift' : 'lifts'}
        {seal ? `, the wood sealed first, ${seal.day}` : ''}
      </p>
    </div>
  );
}
