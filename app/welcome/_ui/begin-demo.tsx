'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { OpenBookKey } from '@/app/welcome/_ui/open-book-key';
import { useEntriesWritten } from '@/app/welcome/_ui/use-entries-written';
import { beginDemoAction } from '@/app/welcome/actions';
import styles from '@/app/welcome/welcome.module.css';

/** One press lays out the demo workshop and opens it. */
export function BeginDemo() {
  const router = useRouter();
  const { run, pending, problem } = useAct(beginDemoAction);
  const [opening, setOpening] = useState(false);
  const entries = useEntriesWritten(pending);
  const begin = async () => {
    const answer = await run({});
    if (!answer.ok) return;
    setOpening(true);
    router.replace('/arrive');
  };
  return (
    <>
      <Key
        variant="ghost"
        onClick={begin}
        pending={pending || opening}
        pendingWords={opening ? 'Opening it' : 'Laying out the demo workshop'}
      >
        Look round a demo workshop
      </Key>
      {pending ? (
        <p className={styles.progress}>
          Some months of a workshop’s life are being written, entry by entry, with their photos. This takes a few
          seconds. {entries > 0 ? <b>{entries} entries so far.</b> : null}
        </p>
      ) : null}
      {problem ? (
        <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo}>
          {problem.code === 'book-already-there' || problem.code === 'demo-half-made' ? <OpenBookKey /> : null}
        </PlainError>
      ) : null}
    </>
  );
}
