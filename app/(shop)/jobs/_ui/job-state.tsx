'use client';

import { useState } from 'react';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { changeJobAction } from '@/app/(shop)/jobs/actions';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** Says a job done or dropped, which frees what was promised to it and not taken; or opens it again. */
export function JobState({ job, promised }: { job: JobLine; promised: number }) {
  const [asked, setAsked] = useState<'done' | 'dropped'>();
  const { run, pending, problem } = useAct(changeJobAction);
  const say = useNotice();

  async function put(state: JobLine['state']) {
    const { id, ...fields } = job;
    const answered = await run({ ...fields, jobId: id, state });
    if (!answered.ok) return giveFeedback('error');
    setAsked(undefined);
    const freed = answered.answer.freed.map((label) => printOwnLabel(label as OwnLabelCode)).join(', ');
    say({
      words: `${job.name} is ${state === 'open' ? 'open again' : state}.${freed ? ` Free again: ${freed}.` : ''}`,
      undo: state === 'open' ? undefined : { words: 'Open it again', run: () => put('open') },
    });
  }

  return (
    <>
      {asked ? (
        <p className={styles.asked} role="status">
          {promised === 0
            ? 'Nothing is promised to it any more.'
            : `${promised === 1 ? 'One piece' : `${promised} pieces`} promised to it and not taken will be free again.`}{' '}
          What was used stays written. It can be opened again.
        </p>
      ) : null}
      <div className={styles.keys}>
        {job.state !== 'open' ? (
          <Key variant="ghost" pending={pending} pendingWords="Writing into the book" onClick={() => void put('open')}>
            Open it again
          </Key>
        ) : asked ? (
          <>
            <Key pending={pending} pendingWords="Writing into the book" onClick={() => void put(asked)}>
              {asked === 'done' ? `Yes, ${job.name} is done` : `Yes, drop ${job.name}`}
            </Key>
            <Key variant="ghost" onClick={() => setAsked(undefined)}>
              Leave it open
            </Key>
          </>
        ) : (
          <>
            <Key variant="ghost" onClick={() => setAsked('done')}>
              It is done
            </Key>
            <Key variant="ghost" onClick={() => setAsked('dropped')}>
              Drop it
            </Key>
          </>
        )}
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </>
  );
}
