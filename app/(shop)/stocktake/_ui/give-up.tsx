'use client';

import { useRouter } from 'next/navigation';
import { useAct } from '@/app/_ui/act/use-act';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveUpAction } from '@/app/(shop)/stocktake/actions';

/** Ends a walk without posting anything. */
export function GiveUp({ stocktake, place }: { stocktake: number; place: string }) {
  const { run, pending, problem } = useAct(giveUpAction);
  const router = useRouter();
  const say = useNotice();
  return (
    <Fold title="Give this stocktake up">
      <p>Nothing of it is posted. What was seen stays with it, and the history can take it up again.</p>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <p>
        <Key
          variant="stop"
          pending={pending}
          pendingWords="Writing into the book"
          onClick={async () => {
            const answer = await run({ stocktake });
            if (!answer.ok) return;
            say({ words: `The stocktake of ${place} is given up. Nothing was posted.` });
            router.push('/stocktake');
          }}
        >
          Give it up, post nothing
        </Key>
      </p>
    </Fold>
  );
}
