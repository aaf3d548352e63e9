'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { removePourAction } from '@/app/(shop)/jobs/[id]/pours/actions';

/** Takes a pour off its job while nothing of it was weighed. The history brings it back. */
export function RemovePour({ pourId, jobId, name }: { pourId: number; jobId: number; name: string }) {
  const { run, pending, problem } = useAct(removePourAction);
  const router = useRouter();
  const say = useNotice();
  const [why, setWhy] = useState('');
  return (
    <Fold title="Take the pour off">
      <form
        noValidate
        onSubmit={async (submit) => {
          submit.preventDefault();
          const answered = await run({ pourId, why });
          if (!answered.ok) return;
          say({ words: `${name} is taken off.` });
          router.push(`/jobs/${jobId}`);
        }}
      >
        <TextField label="Why?" value={why} onChange={setWhy} maxLength={1000} error={problem?.fields?.why} />
        {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
        <div className={styles.rowKeys}>
          <Key type="submit" variant="stop" pending={pending} pendingWords="Writing into the book">
            Take {name} off
          </Key>
        </div>
      </form>
    </Fold>
  );
}
