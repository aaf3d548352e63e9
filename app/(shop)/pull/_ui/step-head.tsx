import styles from '@/app/(shop)/pull/_ui/pull.module.css';

/** Where somebody is on the way to using a stopped container. */
export function StepHead({ step, words }: { step: 1 | 2 | 3; words: string }) {
  return (
    <h2 className={styles.step}>
      <span className={styles.soft}>Use it anyway, step {step} of 3</span> {words}
    </h2>
  );
}
