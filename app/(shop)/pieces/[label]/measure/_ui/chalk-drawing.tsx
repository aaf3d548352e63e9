import { inSvg, ringPath } from '@/app/_ui/slab/paths';
import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';
import type { ReadChalk } from '@/app/(shop)/pieces/[label]/measure/chalk';
import { layChalkLine } from '@/shared/outline/lay-chalk-line';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface ChalkDrawingProps {
  read: ReadChalk;
  problems: Readonly<Record<string, string>>;
  prefer: UnitSystem;
}

/** The slab as far as it is typed, to scale, with its stations; the value that looks wrong is ringed. */
export function ChalkDrawing({ read: { line, places, outline, doubt }, problems, prefer }: ChalkDrawingProps) {
  if (line.stations.length < 2) {
    return <p className={styles.waiting}>The drawing begins with the second station.</p>;
  }
  const laid = layChalkLine(line);
  const bounds = boundsOf(places.length > 0 ? places : laid.edge);
  const length = Math.max(1, (bounds.right - bounds.left) / 1000);
  const width = Math.max(1, (bounds.top - bounds.bottom) / 1000);
  const room = Math.max(length, width) * 0.03;
  const [x, y] = [bounds.left / 1000 - room, -bounds.top / 1000 - room];
  const ringed = places.filter(({ key }) => problems[key] || key === doubt);
  const say = (mm: number) => printLength(nanometres(Math.round(mm * 1e6)), { prefer, style: 'inches' });
  const sized = `${say(length)} long, ${say(width)} over all`;
  return (
    <figure className={styles.figure}>
      <svg
        viewBox={`${x} ${y} ${length + 2 * room} ${width + 2 * room}`}
        className={styles.svg}
        role="img"
        aria-label={`The outline so far: ${line.stations.length} stations, ${sized}.`}
      >
        {laid.edge.length > 2 ? (
          <path className={outline ? styles.wood : styles.unsure} d={ringPath(laid.edge)} />
        ) : null}
        {laid.gaps.map((gap) => (
          <path key={ringPath(gap)} className={styles.gap} d={ringPath(gap)} />
        ))}
        <path className={styles.chalk} d={`M${bounds.left / 1000} 0H${bounds.right / 1000}`} />
        {line.stations.map(({ at, left, right }) => (
          <path
            key={`${at} ${left} ${right}`}
            className={styles.station}
            d={`M${at / 1e6} ${-left / 1e6}V${right / 1e6}`}
          />
        ))}
        {ringed.map((place) => {
          const { x: cx, y: cy } = inSvg(place);
          return <circle key={place.key} className={styles.ring} cx={cx} cy={cy} r={room * 0.8} />;
        })}
      </svg>
      <figcaption className={styles.sized}>{outline ? sized : 'Not an outline yet'}</figcaption>
    </figure>
  );
}
