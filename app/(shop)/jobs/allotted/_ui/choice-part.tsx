'use client';

import { useState, useTransition } from 'react';
import type { ChoiceWords } from '@/app/_server/allocation/explain-allocation';
import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/jobs/allotted/_ui/allotted.module.css';
import { explainTinAction } from '@/app/(shop)/jobs/allotted/actions';

type Said = ChoiceWords | 'changed' | 'unreached';

/** Why this tin, worked out when it is asked for: everything is allotted once more without it, and the two compared. */
export function ChoicePart({ needId, containerId, code }: { needId: string; containerId: string; code: string }) {
  const [said, setSaid] = useState<Said>();
  const [pending, start] = useTransition();
  function ask() {
    start(async () => {
      try {
        setSaid((await explainTinAction({ needId, containerId })) ?? 'changed');
      } catch {
        setSaid('unreached');
      }
    });
  }
  if (said === 'changed') return <p role="status">The book has changed since. Load the page again.</p>;
  if (said && said !== 'unreached') {
    return (
      <div className={styles.answer} role="status">
        <p>{said.why.join(' ')}</p>
        <p>
          <b>Without it:</b> {said.instead.join(' ')}
        </p>
      </div>
    );
  }
  return (
    <>
      {said === 'unreached' ? <p role="status">The book was not reached. Nothing was changed; ask again.</p> : null}
      <Key variant="ghost" pending={pending} pendingWords="Working it out" onClick={ask}>
        Why {code}?
      </Key>
    </>
  );
}
