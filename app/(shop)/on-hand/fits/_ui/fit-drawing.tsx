import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type { FitView } from '@/app/(shop)/on-hand/fits/fit-view';

interface FitDrawingProps {
  view: FitView;
  liveEdges: { left: boolean; right: boolean };
  /** The words that stand on the wood. */
  words: string;
  /** The length drawn as the whole width, the same for every drawing of a list. */
  wholeMm: number;
  /** The drawing in words. */
  label: string;
}

type At = FitView['top'][number];
const join = (points: readonly At[]) => `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;
const between = ([a, b]: readonly [readonly At[], readonly At[]], part: number) =>
  a.map((point, nr) => ({ x: point.x, y: point.y + ((b[nr]?.y ?? point.y) - point.y) * part }));

/** A piece drawn to scale with the top on it. Its long edges are straight between the widths that were measured. */
export function FitDrawing({ view, liveEdges, words, wholeMm, label }: FitDrawingProps) {
  const room = wholeMm * 0.006;
  const { box, topBox } = view;
  const width = box.width + 2 * room;
  const tick = wholeMm * 0.02;
  const onWood = topBox.height / wholeMm > 0.13 && topBox.width / wholeMm > 0.36;
  return (
    <div className={styles.drawing}>
      <div
        className={styles.scaled}
        style={{ width: `${(width / (wholeMm + 2 * room)) * 100}%` }}
        role="img"
        aria-label={label}
      >
        <svg
          viewBox={`${box.x - room} ${box.y - room} ${width} ${box.height + 2 * room}`}
          className={styles.svg}
          aria-hidden="true"
          focusable="false"
        >
          <path className={styles.wood} d={`${join(view.wood)}Z`} />
          {[0.22, 0.4, 0.6, 0.78].map((part) => (
            <path key={part} className={styles.grain} d={join(between(view.edges, part))} />
          ))}
          <path className={styles.sawn} d={`${join(view.wood)}Z`} />
          {liveEdges.left ? <path className={styles.bark} d={join(view.edges[0])} /> : null}
          {liveEdges.right ? <path className={styles.bark} d={join(view.edges[1])} /> : null}
          <path className={styles.top} data-line={view.line} d={`${join(view.top)}Z`} />
          {view.tight.map(({ x, y }) => (
            <path key={y} className={styles.tight} d={`M${x} ${y - tick}V${y + tick}`} />
          ))}
        </svg>
        {onWood ? (
          <span
            className={styles.words}
            style={{
              left: `${((topBox.x - box.x + room) / width) * 100}%`,
              width: `${(topBox.width / width) * 100}%`,
            }}
          >
            <span>{words}</span>
          </span>
        ) : null}
      </div>
      {onWood ? null : <p className={styles.under}>{words}</p>}
    </div>
  );
}
