import { SampleFacts, type SampleFactsProps } from '@/app/(shop)/samples/_parts/sample-facts';
import { SampleWays } from '@/app/(shop)/samples/_parts/sample-ways';
import styles from '@/app/(shop)/samples/_ui/samples.module.css';

/** A sample at the head of its own trace. */
export function SampleOfTrace(props: SampleFactsProps) {
  return (
    <div className={styles.facts}>
      <SampleFacts {...props} />
      <SampleWays sample={props.sample} />
    </div>
  );
}
