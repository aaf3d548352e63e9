'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { releaseAction, releaseAllAction } from '@/app/(shop)/jobs/[id]/needs/actions';

export interface ReleaseKeyProps {
  jobId: number;
  /** What is freed; everything the job is promised without it. */
  items?: readonly { label: string; needId?: number }[];
  words: string;
}

/** Frees what a job is promised: others may have it. Undone from the history. */
export function ReleaseKey({ jobId, items, words }: ReleaseKeyProps) {
  const some = useAct(releaseAction);
  const all = useAct(releaseAllAction);
  const say = useNotice();
  const problem = some.problem ?? all.problem;
  async function press() {
    const answered = items ? await some.run({ jobId, items }) : await all.run({ jobId, why: '' });
    if (!answered.ok) return giveFeedback('error');
    const { answer } = answered;
    const count = 'labels' in answer ? answer.labels.length : answer.released.length;
    say({ words: `${count === 1 ? 'It is' : `${count} things are`} free for others again.` });
  }
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key variant="ghost" pending={some.pending || all.pending} pendingWords="Freeing" onClick={() => void press()}>
        {words}
      </Key>
    </>
  );
}
