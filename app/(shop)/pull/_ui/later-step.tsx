'use client';

import { type ComponentType, useEffect, useState } from 'react';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';

/** A step of the bench whose script comes after the first load. */
export type Later<Props> = {
  /** Undefined until its script has come. */
  readonly step: () => ComponentType<Props> | undefined;
  /** Fetches the script, once; again where it did not come. */
  readonly fetch: () => Promise<void>;
};

export function later<Props>(load: () => Promise<ComponentType<Props>>): Later<Props> {
  let ready: ComponentType<Props> | undefined;
  return {
    step: () => ready,
    fetch: async () => {
      ready ??= await load();
    },
  };
}

/**
 * Shows a later step: at once where its script was fetched ahead, so that what takes the focus in it takes it as it would
 * otherwise; where the script does not come, it says so and tries again.
 */
export function LaterStep<Props extends object>({ of, given }: { of: Later<Props>; given: Props }) {
  const [state, setState] = useState<'waiting' | 'come' | 'failed'>('waiting');
  const Step = of.step();
  const fetching = Step === undefined && state === 'waiting';
  useEffect(() => {
    if (!fetching) return;
    let gone = false;
    const to = (next: 'come' | 'failed') => () => gone || setState(next);
    of.fetch().then(to('come'), to('failed'));
    return () => {
      gone = true;
    };
  }, [of, fetching]);

  if (Step) return <Step {...given} />;
  if (state !== 'failed') {
    return (
      <p role="status" className={styles.soft}>
        Opening the next step…
      </p>
    );
  }
  return (
    <div className={styles.stage}>
      <div className={styles.narrow}>
        <PlainError
          happened="The next step could not be fetched."
          kept="This pull is kept here. Nothing is in the book yet."
          toDo="Come back into Wi-Fi and press the key. If it stays, load the page again."
        />
      </div>
      <KeyBar>
        <Key onClick={() => setState('waiting')}>Try again</Key>
      </KeyBar>
    </div>
  );
}
