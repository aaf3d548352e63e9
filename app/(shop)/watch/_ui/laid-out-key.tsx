'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { layOutRagsAction } from '@/app/(shop)/watch/actions';

/** Says in the book that the rags are laid out. */
export function LaidOutKey() {
  const { run, pending, problem } = useAct(layOutRagsAction);
  const say = useNotice();
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key
        pending={pending}
        pendingWords="Writing into the book"
        onClick={async () => {
          const answer = await run({});
          if (answer.ok) say({ words: 'The rags are laid out: it is in the book.' });
        }}
      >
        They are laid out, or in their can
      </Key>
    </>
  );
}
