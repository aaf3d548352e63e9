import type { CSSProperties } from 'react';
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
  const length = right - left;
  // Figures as large on a phone as on a desk: the style sheet knows how wide the drawing is shown.
  const size = { '--length': length / 1000 } as CSSProperties;
  return readings.map(({ id, at, percent }) => {
    const { x, y } = inSvg(at);
    const isLate = at.x > left + length * 0.8;
    return (
      <g
        key={id}
        className={styles.reading}
        style={size}
        transform={`translate(${x} ${y})${flipped ? ' scale(1 -1)' : ''}`}
      >
        <circle className={styles.dot} />
        <text
          className={styles.figure}
          dx={isLate ? '-0.5em' : '0.5em'}
          dy="0.35em"
          textAnchor={isLate ? 'end' : 'start'}
        >
          {percent} %
        </text>
      </g>
    );
  });
}
