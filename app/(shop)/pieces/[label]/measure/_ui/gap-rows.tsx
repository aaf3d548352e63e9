import { Key } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';
import { StationRows, type StationRowsProps } from '@/app/(shop)/pieces/[label]/measure/_ui/station-rows';

export type GapRowsProps = Omit<StationRowsProps, 'doubt' | 'gap'> & { gap: number; onTakeOut: () => void };

/** The stations of one gap: where there is no wood between its two banks. */
export function GapRows({ onTakeOut, ...rows }: GapRowsProps) {
  return (
    <Section title={`Gap ${rows.gap + 1}`}>
      <p className={styles.how}>
        No wood between its two banks. Where it reaches an end of the slab it opens there, as a crotch does.
      </p>
      <StationRows {...rows} doubt={undefined} />
      <Key variant="ghost" onClick={onTakeOut}>
        Take gap {rows.gap + 1} out
      </Key>
    </Section>
  );
}
