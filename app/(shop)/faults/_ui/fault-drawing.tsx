import type { ReactNode } from 'react';
import { inSvg } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import styles from '@/app/(shop)/faults/_ui/faults.module.css';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';

export interface FaultDrawingProps {
  outline: Outline;
  marks: PieceMarks;
  places: readonly Point[];
  /** The drawing in words. */
  label: string;
  /** A layer that takes taps. */
  children?: ReactNode;
}

/** A piece as it is drawn everywhere, with a dot where something was found. */
export function FaultDrawing({ outline, marks, places, label, children }: FaultDrawingProps) {
  const { left, right } = boundsOf(outline.ring);
  const dot = (right - left) / 90_000;
  return (
    <SlabDrawing outline={outline} marks={marks} face="A" lined label={label}>
      {places.map((place) => {
        const { x, y } = inSvg(place);
        return <circle key={`${x}/${y}`} className={styles.at} cx={x} cy={y} r={dot} />;
      })}
      {children}
    </SlabDrawing>
  );
}
