'use client';

import { type ReactNode, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { type PhotoUnder, SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { ReadingDots } from '@/app/(shop)/pieces/_ui/reading-dots';
import styles from '@/app/(shop)/pieces/_ui/slab-part.module.css';
import type { PlacedReading } from '@/app/(shop)/pieces/placed-readings';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';

export interface SlabPartProps {
  outline: Outline;
  marks: PieceMarks;
  photo: PhotoUnder | undefined;
  readings: readonly PlacedReading[];
  live: { left: boolean; right: boolean };
  /** The drawing in words. */
  label: string;
  /** How it was measured. */
  children?: ReactNode;
}

const SHOW = [
  { value: 'A', label: 'Face A' },
  { value: 'B', label: 'Face B' },
] as const;

/** The slab as it was measured: both faces, the photo under it, marks and readings where they are. */
export function SlabPart({ outline, marks, photo, readings, live, label, children }: SlabPartProps) {
  const [face, setFace] = useState<'A' | 'B'>('A');
  const [withPhoto, setWithPhoto] = useState(true);
  return (
    <div className={styles.part}>
      <SlabDrawing
        outline={outline}
        marks={marks}
        face={face}
        live={live}
        photo={withPhoto && face === 'A' ? photo : undefined}
        label={`${label}, seen from face ${face}`}
      >
        <ReadingDots outline={outline} readings={readings} flipped={face === 'B'} />
      </SlabDrawing>
      <div className={styles.shown}>
        <ChoiceChips
          label="Seen from"
          options={SHOW}
          value={face}
          onChange={(value) => setFace(value === 'B' ? 'B' : 'A')}
        />
        {photo && face === 'A' ? (
          <label className={styles.tick}>
            <input type="checkbox" checked={withPhoto} onChange={(flip) => setWithPhoto(flip.currentTarget.checked)} />
            Photo under the drawing
          </label>
        ) : null}
      </div>
      {children}
    </div>
  );
}
