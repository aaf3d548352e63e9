'use client';

import { inSvg } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { TapLayer } from '@/app/_ui/slab/tap-layer';
import { typedLength } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/pieces/_ui/reading-act.module.css';
import { readAcross } from '@/app/(shop)/pieces/read-across';
import type { TypedReading } from '@/app/(shop)/pieces/typed-reading';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { micrometres, type Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The slab with the places of the readings being typed; a tap puts the reading where the meter stands. */
export function ReadingDrawing({
  outline,
  rows,
  prefer,
  onTap,
}: {
  outline: Outline;
  rows: readonly TypedReading[];
  prefer: UnitSystem;
  onTap: (point: Point) => void;
}) {
  const { left, right } = boundsOf(outline.ring);
  const size = (right - left) / 1000 / 26;
  return (
    <div className={styles.drawing}>
      <SlabDrawing
        outline={outline}
        label="The outline with the places of these readings. They can be typed under each reading too."
      >
        {rows.map((row, at) => {
          const place = placeOf(row, prefer);
          if (!place) return null;
          const { x, y } = inSvg(place);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows are appended, never moved.
            <g key={at} transform={`translate(${x} ${y})`}>
              <circle className={styles.dot} r={size * 0.26} />
              <text className={styles.nr} x={size * 0.45} y={size * 0.35} fontSize={size}>
                {row.moisture.trim() || at + 1}
              </text>
            </g>
          );
        })}
        <TapLayer outline={outline} onTap={onTap} />
      </SlabDrawing>
      <p className={styles.soft}>Tap where the meter stands, then type what it shows.</p>
    </div>
  );
}

function placeOf({ along, across }: TypedReading, prefer: UnitSystem): Point | undefined {
  const x = typedLength(along, prefer);
  const y = readAcross(across, prefer);
  if (x === undefined || (y && !y.ok)) return undefined;
  return { x: micrometres(x), y: y ? micrometres(y.value) : 0 };
}
