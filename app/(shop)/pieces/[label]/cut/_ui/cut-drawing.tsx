'use client';

import { openPath, outlinePath } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { TapLayer } from '@/app/_ui/slab/tap-layer';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import { boxAround, runThrough } from '@/shared/outline/cut-line';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import { placeInside } from '@/shared/outline/place-inside';
import type { Point } from '@/shared/outline/point';

export interface CutDrawingProps {
  outline: Outline;
  marks: PieceMarks;
  live: { left: boolean; right: boolean };
  parts: readonly { outline: Outline; isScrap: boolean }[];
  /** The line that is being drawn, as far as it is. */
  points: readonly Point[];
  onTap: (point: Point) => void;
}

/** Room round the wood, as `SlabDrawing` leaves it, as a part of its length. */
const ROOM = 0.012;

/** The slab with its cuts: each piece by its number, scrap hatched, the line in hand in red. Takes taps. */
export function CutDrawing({ outline, marks, live, parts, points, onTap }: CutDrawingProps) {
  const bounds = boundsOf(outline.ring);
  const room = (bounds.right - bounds.left) * ROOM;
  const through = points.length > 1 ? runThrough(points, boxAround(bounds, points)) : points;
  const line = typeof through === 'string' ? points : through;
  const dot = (bounds.right - bounds.left) / 160_000;
  const across = (x: number) => (100 * (x - bounds.left + room)) / (bounds.right - bounds.left + 2 * room);
  const down = (y: number) => (100 * (bounds.top - y + room)) / (bounds.top - bounds.bottom + 2 * room);
  return (
    <div className={styles.drawing}>
      <SlabDrawing
        outline={outline}
        marks={marks}
        live={live}
        lined
        label={`The piece with its cuts, in ${parts.length} pieces. Every line can be typed below.`}
        over={
          parts.length > 1
            ? parts.map((part, nr) => {
                const { x, y } = placeInside(part.outline);
                return (
                  <span
                    // biome-ignore lint/suspicious/noArrayIndexKey: a piece is known by its number.
                    key={nr}
                    className={styles.number}
                    data-scrap={part.isScrap || undefined}
                    style={{ left: `${across(x)}%`, top: `${down(y)}%` }}
                  >
                    {nr + 1}
                  </span>
                );
              })
            : null
        }
      >
        <defs>
          <clipPath id="cut-wood">
            <path d={outlinePath(outline)} clipRule="evenodd" />
          </clipPath>
          <pattern id="cut-scrap" width="30" height="30" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <rect className={styles.hatch} width="14" height="30" />
          </pattern>
        </defs>
        {parts.map((part, nr) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: a piece is known by its number.
            key={nr}
            className={styles.part}
            d={outlinePath(part.outline)}
            fill={part.isScrap ? 'url(#cut-scrap)' : undefined}
            data-scrap={part.isScrap || undefined}
          />
        ))}
        {line.length > 1 ? (
          <g clipPath="url(#cut-wood)">
            <path className={styles.line} d={openPath(line)} />
          </g>
        ) : null}
        {points.map((point, nr) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: points are in the order they were tapped.
          <circle key={nr} className={styles.dot} cx={point.x / 1000} cy={-point.y / 1000} r={dot} />
        ))}
        <TapLayer outline={outline} onTap={onTap} />
      </SlabDrawing>
    </div>
  );
}
