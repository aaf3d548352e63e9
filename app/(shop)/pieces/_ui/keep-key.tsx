'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import type { Answer } from '@/shared/result/answer';

/** Keeps a figure of a piece that was typed to reckon with. */
export function KeepKey<A>({
  action,
  input,
  words,
  done,
}: {
  action: (key: string, input: unknown) => Promise<Answer<A>>;
  input: unknown;
  words: string;
  done: string;
}) {
  const { run, pending, problem } = useAct<unknown, A>(action);
  const say = useNotice();
  return (
    <div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key
        variant="ghost"
        pending={pending}
        pendingWords="Writing"
        onClick={async () => {
          const answer = await run(input);
          if (answer.ok) say({ words: done });
        }}
      >
        {words}
      </Key>
    </div>
  );
}
