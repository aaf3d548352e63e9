import { outlinePath, ringPath } from '@/app/_ui/slab/paths';
import styles from '@/app/_ui/slab/river-drawing.module.css';
import type { Outline, Ring } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';

/** The finished top of two pieces and a river, in micrometres about its middle: each bank's wood and the top's edge. */
export type RiverView = { readonly top: Ring; readonly woods: readonly Outline[] };

interface RiverDrawingProps {
  river: RiverView;
  /** The length drawn as the whole width, millimetres; the top's own where it stands alone. */
  wholeMm?: number;
  label: string;
}

/** The finished top to scale: two banks of wood and the river between them. */
export function RiverDrawing({ river, wholeMm, label }: RiverDrawingProps) {
  const { left, right, bottom, top } = boundsOf(river.top);
  const whole = wholeMm ?? (right - left) / 1000;
  const room = whole * 0.012;
  const [width, height] = [(right - left) / 1000 + 2 * room, (top - bottom) / 1000 + 2 * room];
  return (
    <div style={{ width: `${Math.min(100, (width / (whole + 2 * room)) * 100)}%` }} role="img" aria-label={label}>
      <svg
        viewBox={`${left / 1000 - room} ${-top / 1000 - room} ${width} ${height}`}
        className={styles.svg}
        aria-hidden="true"
        focusable="false"
      >
        <path className={styles.resin} d={ringPath(river.top)} />
        {river.woods.map((wood) => (
          <path key={outlinePath(wood)} className={styles.bank} d={outlinePath(wood)} />
        ))}
        <path className={styles.top} d={ringPath(river.top)} />
      </svg>
    </div>
  );
}
