import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { inSvg, linePath, placePath } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { TapLayer } from '@/app/_ui/slab/tap-layer';
import styles from '@/app/(shop)/pieces/[label]/marks/_ui/marks.module.css';
import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { countMarks, type NewMark, type PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MarksDrawingProps {
  outline: Outline;
  marks: PieceMarks;
  face: 'A' | 'B';
  /** The mark being made, as far as it reads. */
  fresh: NewMark | undefined;
  /** Its points as they are typed. */
  points: string;
  prefer: UnitSystem;
  onTap: (point: Point) => void;
}

/** The slab with its marks, the one being made over them, and a place to tap. */
export function MarksDrawing({ outline, marks, face, fresh, points: typed, prefer, onTap }: MarksDrawingProps) {
  const [isClose, setClose] = useState(false);
  const read = readPoints(typed, prefer);
  const { left, right } = boundsOf(outline.ring);
  // A dot that is seen and covers little.
  const dot = (right - left) / (isClose ? 480_000 : 160_000);
  return (
    <>
      <section className={styles.drawing} aria-label="The drawing" tabIndex={isClose ? 0 : undefined}>
        <div className={isClose ? styles.close : undefined}>
          <SlabDrawing
            outline={outline}
            marks={marks}
            face={face}
            lined
            label={`The outline, seen from face ${face}, with ${countMarks(marks)} marks. Points can be typed below.`}
          >
            {fresh?.is === 'defect' ? <path className={styles.fresh} d={placePath(fresh.place)} /> : null}
            {fresh?.is === 'strap' ? <path className={styles.freshStrap} d={linePath(fresh.from, fresh.to)} /> : null}
            {fresh?.is === 'end-check' ? (
              <path className={styles.freshTrim} d={trimPath(outline, fresh.end, fresh.depth / 1000)} />
            ) : null}
            {read.ok
              ? read.points.map((point, nr) => {
                  const { x, y } = inSvg(point);
                  // biome-ignore lint/suspicious/noArrayIndexKey: points are in the order they were tapped.
                  return <circle key={nr} className={styles.point} cx={x} cy={y} r={dot} />;
                })
              : null}
            <TapLayer outline={outline} onTap={onTap} />
          </SlabDrawing>
        </div>
      </section>
      <ChoiceChips
        label="Seen"
        options={[
          { value: 'whole', label: 'Whole' },
          { value: 'close', label: 'Closer, to tap finer' },
        ]}
        value={isClose ? 'close' : 'whole'}
        onChange={(value) => setClose(value === 'close')}
      />
    </>
  );
}

function trimPath(outline: Outline, end: 'start' | 'end', depth: number): string {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  const x = end === 'start' ? left + depth : right - depth;
  return linePath({ x, y: bottom }, { x, y: top });
}
