'use client';

import { useState } from 'react';
import { SelectField } from '@/app/_ui/field/select-field';
import { Fold } from '@/app/_ui/fold';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { sayDifference, sizeFigures } from '@/app/(shop)/pieces/size-figures';
import { workOutBoardFeet } from '@/app/(shop)/pieces/work-out-board-feet';
import type { UnitSystem } from '@/shared/units/unit-system';
import { QUARTER_THICKNESSES } from '@/shared/wood/quarter-thickness';

/** How much wood it is: face, volume, board measure by the seller and true, narrowest and widest. */
export function SizePart({ piece, prefer }: { piece: FiguredPiece; prefer: UnitSystem }) {
  const [quarters, setQuarters] = useState(String(piece.soldAs));
  const measure = workOutBoardFeet(piece, Number(quarters));
  const cubic = `${measure.cubicMetres.value.toFixed(4)} m³`;
  return (
    <Fold
      title="How much wood"
      now={piece.form === 'sheet' ? cubic : `${cubic}, ${measure.boardFeet.value.toFixed(1)} board feet`}
    >
      <div className={styles.part}>
        <p className={styles.soft}>
          {piece.measured
            ? 'By its measured outline and one thickness.'
            : 'By its length, three widths and one thickness. Measure its outline, and these follow it.'}
        </p>
        {measure.sellers ? (
          <SelectField
            label="Sold as"
            hint="The thickness the seller counts, rough and before it was surfaced."
            options={QUARTER_THICKNESSES.filter((each) => each.quarters >= 4).map((each) => ({
              value: String(each.quarters),
              label: `${each.quarters}/4`,
            }))}
            value={quarters}
            onChange={setQuarters}
          />
        ) : null}
        <FigureList prefer={prefer} figures={sizeFigures(piece, measure, prefer)} />
        {measure.sellers ? (
          <p className={styles.soft}>{sayDifference(measure.sellers.difference, piece.form)}</p>
        ) : null}
      </div>
    </Fold>
  );
}
