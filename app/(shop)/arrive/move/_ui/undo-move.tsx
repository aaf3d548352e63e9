'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';

/** Takes a move back by its reversing entry. */
export function UndoMove({ entryId, name, onUndone }: { entryId: number; name: string; onUndone: () => void }) {
  const { run, pending, problem } = useAct(reverseAction);
  return (
    <>
      <Key
        variant="ghost"
        pending={pending}
        pendingWords="Undoing…"
        aria-label={`Undo the move of ${name}`}
        onClick={async () => {
          const answer = await run({ entryId, why: 'Moved by mistake' });
          if (answer.ok) onUndone();
        }}
      >
        Undo
      </Key>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </>
  );
}
