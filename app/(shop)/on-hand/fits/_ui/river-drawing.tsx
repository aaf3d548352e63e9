import { useId } from 'react';
import { ringPath } from '@/app/_ui/slab/paths';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type { RiverView } from '@/app/(shop)/on-hand/fits/fit-view';
import { boundsOf } from '@/shared/outline/outline-bounds';

/** The finished top to the scale of its list: two banks of wood and the river between them. */
export function RiverDrawing({ river, wholeMm, label }: { river: RiverView; wholeMm: number; label: string }) {
  const id = useId();
  const { left, right, bottom, top } = boundsOf(river.top);
  const room = wholeMm * 0.012;
  const [width, height] = [(right - left) / 1000 + 2 * room, (top - bottom) / 1000 + 2 * room];
  return (
    <div
      className={styles.drawing}
      style={{ width: `${Math.min(100, (width / (wholeMm + 2 * room)) * 100)}%` }}
      role="img"
      aria-label={label}
    >
      <svg
        viewBox={`${left / 1000 - room} ${-top / 1000 - room} ${width} ${height}`}
        className={styles.svg}
        aria-hidden="true"
        focusable="false"
      >
        <clipPath id={id}>
          <path d={ringPath(river.top)} />
        </clipPath>
        <path className={styles.resin} d={ringPath(river.top)} />
        <g clipPath={`url(#${id})`}>
          {river.woods.map((wood) => (
            <path key={ringPath(wood)} className={styles.bank} d={ringPath(wood)} />
          ))}
        </g>
        <path className={styles.top} d={ringPath(river.top)} />
      </svg>
    </div>
  );
}
