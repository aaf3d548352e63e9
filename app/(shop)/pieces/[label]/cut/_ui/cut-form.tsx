'use client';

import { useState } from 'react';
import type { House } from '@/app/_server/cuts/read-house';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { BandsCut } from '@/app/(shop)/pieces/[label]/cut/_ui/bands-cut';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import { LinesCut } from '@/app/(shop)/pieces/[label]/cut/_ui/lines-cut';
import { ResawCut } from '@/app/(shop)/pieces/[label]/cut/_ui/resaw-cut';
import { newLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { Nanometres } from '@/shared/units/nanometres';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { PieceFlag, PieceForm } from '@/shared/wood/piece';

/** The piece that is cut. */
type CutPieceView = {
  readonly label: string;
  readonly form: PieceForm;
  readonly flags: readonly PieceFlag[];
  readonly shapeId: number | null;
  readonly outline: Outline;
  readonly marks: PieceMarks;
  readonly thicknessNm: Nanometres;
  readonly job: string | undefined;
};

export interface CutFormProps {
  piece: CutPieceView;
  house: House;
  /** The house kerf, as it would be typed. */
  kerf: string;
  prefer: UnitSystem;
}

/** How a piece is taken apart: along lines, through its thickness, or by cutting its bands. */
export function CutForm(props: CutFormProps) {
  const { piece } = props;
  const isStrapped = piece.marks.straps.length > 0 || piece.flags.includes('strapped');
  const [how, setHow] = useState('lines');
  return (
    <>
      <ChoiceChips
        label="What is done"
        options={[
          { value: 'lines', label: 'Cut or break it' },
          { value: 'resaw', label: 'Resaw it', hint: 'through its thickness' },
          ...(isStrapped ? [{ value: 'bands', label: 'Cut its bands' }] : []),
        ]}
        value={how}
        onChange={setHow}
      />
      {isStrapped && how !== 'bands' ? (
        <p className={styles.caution}>
          It is strapped, and a cut through a band, or beside one, can let it spring open. Cut its bands first, or clamp
          it on both sides of the cut and stand clear of its ends.
        </p>
      ) : null}
      {how === 'resaw' ? <ResawCut {...props} /> : null}
      {how === 'bands' ? <BandsCut {...props} /> : null}
      {how === 'lines' ? <LinesCut {...props} bands="kept" begun={[newLine('cross')]} /> : null}
    </>
  );
}
