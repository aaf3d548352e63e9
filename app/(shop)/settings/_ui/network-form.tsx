'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { changeServingAction } from '@/app/(shop)/settings/actions';

type Now = 'network' | 'this-computer' | 'unknown';

const IN_FORCE: Record<Now, string> = {
  network: 'Now the book is open to this workshop’s network.',
  'this-computer': 'Now only this computer can open the book.',
  unknown: 'This server was not started by npm start. It answers only to names of its own computer.',
};

/** Who can reach the book. Opening it takes a second, deliberate press after what it means was read. */
export function NetworkForm({ now, next }: { now: Now; next: boolean }) {
  const { run, pending, problem } = useAct(changeServingAction);
  const [asking, setAsking] = useState(false);
  const change = async (network: boolean) => {
    const answer = await run({ network });
    if (answer.ok) setAsking(false);
  };
  const waits = now !== 'unknown' && (now === 'network') !== next;

  return (
    <div className={styles.form}>
      <div role="status">
        <p className={styles.strong}>{IN_FORCE[now]}</p>
        {waits ? (
          <p>
            From the next start it is {next ? 'open to this workshop’s network' : 'for this computer only'}: stop the
            program with Ctrl+C and run npm start again.
          </p>
        ) : null}
        {now === 'unknown' ? (
          <p>At the next npm start it is {next ? 'open to this workshop’s network' : 'for that computer only'}.</p>
        ) : null}
      </div>
      {next ? (
        <Key variant="ghost" pending={pending} pendingWords="Keeping it" onClick={() => change(false)}>
          From the next start, this computer only
        </Key>
      ) : asking ? (
        <div className={styles.ask}>
          <p className={styles.warn}>
            <VerdictMark word="care" size={24} />
            <span>Opening it means:</span>
          </p>
          <ul className={styles.points}>
            <li>
              Anyone in this network can read the book and write in it. There is no sign-in yet: the name beside an
              entry is only what a device was told.
            </li>
            <li>
              What goes over the air is not encrypted. Use it in a network with its own password, not in a guest or
              public one.
            </li>
            <li>
              Phones’ browsers do not give the camera to a plain http page. Typing a label, a photo of it and a hand
              scanner work on every device. Scanning by camera works on this computer at localhost, on a phone that
              reaches localhost through a cable, or behind an https address that you set up in this network.
            </li>
          </ul>
          <Key variant="stop" pending={pending} pendingWords="Keeping it" onClick={() => change(true)}>
            Yes, open it to this network from the next start
          </Key>
          <Key variant="ghost" onClick={() => setAsking(false)}>
            Leave it to this computer only
          </Key>
        </div>
      ) : (
        <Key variant="ghost" onClick={() => setAsking(true)}>
          Open to this workshop’s network
        </Key>
      )}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </div>
  );
}
