import { inSvg } from '@/app/_ui/slab/paths';
import styles from '@/app/(shop)/pieces/_ui/slab-part.module.css';
import type { PlacedReading } from '@/app/(shop)/pieces/placed-readings';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';

export interface ReadingDotsProps {
  outline: Outline;
  readings: readonly PlacedReading[];
  /** Under a drawing that is turned over, so that the figures still stand upright. */
  flipped?: boolean;
}

/** Moisture readings where they were taken, the newest of each place, as figures on the wood. Lies inside a `SlabDrawing`. */
export function ReadingDots({ outline, readings, flipped = false }: ReadingDotsProps) {
  const { left, right } = boundsOf(outline.ring);
  const size = (right - left) / 1000 / 42;
  return readings.map(({ id, at, percent }) => {
    const { x, y } = inSvg(at);
    return (
      <g key={id} transform={`translate(${x} ${y})${flipped ? ' scale(1 -1)' : ''}`}>
        <circle className={styles.dot} r={size * 0.28} />
        <text className={styles.figure} x={size * 0.5} y={size * 0.35} fontSize={size}>
          {percent} %
        </text>
      </g>
    );
  });
}
