'use client';

import { Section } from '@/app/_ui/section';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import styles from '@/app/(shop)/pieces/_ui/pack.module.css';
import { PackTable } from '@/app/(shop)/pieces/_ui/pack-table';
import type { packView } from '@/app/(shop)/pieces/pack-view';
import type { UnitSystem } from '@/shared/units/unit-system';
import { sayBoardFeet } from '@/shared/wood/pack-figures';

export interface PackPartProps {
  label: string;
  pack: ReturnType<typeof packView>;
  prefer: UnitSystem;
  /** Nothing is taken out of a pack that is no longer here. */
  gone: boolean;
}

/** A pack of boards: how many board feet it is by the rule, by its volume and by its seller; its tally; what is left of it. */
export function PackPart({ label, pack, prefer, gone }: PackPartProps) {
  return (
    <Section title="The boards of this pack" aside={`${pack.rows.length} tallied`}>
      <p className={styles.left}>
        {pack.left}
        {pack.costLeft ? ` ${pack.costLeft} of its cost is in it.` : ''}
      </p>
      <FigureList
        prefer={prefer}
        figures={[
          {
            term: `By the tally rule at ${pack.quarters}/4`,
            value: sayBoardFeet(pack.tally.value),
            how: pack.tally.how,
          },
          {
            term: `What is there, ${pack.cubicMetres.toFixed(3)} m³`,
            value: sayBoardFeet(Math.round(pack.volume.value * 10) / 10),
            how: pack.volume.how,
          },
        ]}
      />
      {pack.seller ? (
        <p className={styles.seller}>
          The seller’s tally: <b>{pack.seller}</b>
        </p>
      ) : null}
      <PackTable label={label} rows={pack.rows} gone={gone} />
    </Section>
  );
}
