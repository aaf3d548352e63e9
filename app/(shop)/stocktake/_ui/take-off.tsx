'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { takeOffAction } from '@/app/(shop)/stocktake/actions';

/** Takes one sighting off the walk: it was scanned by mistake. */
export function TakeOff({
  which,
  name,
  words = 'Not seen',
  onTaken,
}: {
  which: { stocktake: number; stockId?: number; lineId?: number };
  name: string;
  words?: string;
  onTaken: () => void;
}) {
  const { run, pending, problem } = useAct(takeOffAction);
  return (
    <div>
      <Key
        variant="ghost"
        pending={pending}
        pendingWords="Taking it off"
        aria-label={`${words}: ${name}`}
        onClick={async () => {
          const answer = await run(which);
          if (answer.ok) onTaken();
        }}
      >
        {words}
      </Key>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </div>
  );
}
