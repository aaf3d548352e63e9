import { Section } from '@/app/_ui/section';
import { Hazards } from '@/app/(shop)/_parts/stock/hazards';
import { cautionsOf } from '@/app/(shop)/pull/_ui/cautions-of';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';

/** What the container warns of, what to mind, and its safety data sheet, which outranks both. */
export function Safety({
  kind,
  hazards,
  safetySheet,
}: {
  kind: string;
  hazards: readonly string[];
  safetySheet: string;
}) {
  const cautions = cautionsOf(kind, hazards);
  return (
    <Section title="Before you open it">
      <div className={styles.safety}>
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
        <Hazards codes={hazards} safetySheet={safetySheet} />
      </div>
    </Section>
  );
}
