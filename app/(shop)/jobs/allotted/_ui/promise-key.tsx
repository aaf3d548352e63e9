'use client';

import type { ReactNode } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { promiseAction } from '@/app/(shop)/jobs/allotted/actions';
import type { AllottedJob } from '@/app/(shop)/jobs/allotted/allotted-view';

/** Promises a job some tins, worked out or by hand: all of them or, where one is no longer free, none. */
export function PromiseKey({ jobId, items, children }: Pick<AllottedJob, 'jobId' | 'items'> & { children: ReactNode }) {
  const { run, pending, problem } = useAct(promiseAction);
  const say = useNotice();
  async function press() {
    const answered = await run({ jobId, items });
    if (!answered.ok) return giveFeedback('error');
    giveFeedback('use');
    const { promised, job } = answered.answer;
    say({ words: `${promised.length === 1 ? '1 tin is' : `${promised.length} tins are`} promised to ${job}.` });
  }
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key variant="ghost" pending={pending} pendingWords="Promising" onClick={() => void press()}>
        {children}
      </Key>
    </>
  );
}
