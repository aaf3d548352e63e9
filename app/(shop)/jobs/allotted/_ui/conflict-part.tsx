'use client';

import { useState, useTransition } from 'react';
import { Key } from '@/app/_ui/keys';
import styles from '@/app/(shop)/jobs/allotted/_ui/allotted.module.css';
import { explainShortageAction } from '@/app/(shop)/jobs/allotted/actions';

/** The fewest things that cannot all be had, worked out when it is asked for. */
export function ConflictPart() {
  const [said, setSaid] = useState<string[][] | 'unreached'>();
  const [pending, start] = useTransition();
  function ask() {
    start(async () => {
      try {
        setSaid(await explainShortageAction());
      } catch {
        setSaid('unreached');
      }
    });
  }
  if (said && said !== 'unreached') {
    return (
      <div className={styles.answer} role="status">
        {said.length === 0 ? <p>Nothing stands in the way of anything else now. Load the page again.</p> : null}
        {said.map((sentences) => (
          <div key={sentences.join(' ')}>
            {sentences.map((sentence, nr) => (
              <p key={sentence}>{nr === 0 ? <b>{sentence}</b> : sentence}</p>
            ))}
          </div>
        ))}
      </div>
    );
  }
  return (
    <div className={styles.keys}>
      {said === 'unreached' ? <p role="status">The book was not reached. Nothing was changed; ask again.</p> : null}
      <Key variant="ghost" pending={pending} pendingWords="Working it out" onClick={ask}>
        What cannot be had together?
      </Key>
    </div>
  );
}
