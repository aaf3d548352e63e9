'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { nameWoodAction } from '@/app/(shop)/pieces/actions';
import type { Species } from '@/shared/wood/species';

/** Writes the chosen wood on the piece, so that every device and every list knows it. */
export function NameWood({ label, species }: { label: string; species: Species }) {
  const { run, pending, problem } = useAct(nameWoodAction);
  const say = useNotice();
  async function write() {
    const answer = await run({ label, speciesId: species.id });
    if (!answer.ok) return;
    const { pieces } = answer.answer;
    say({
      words: pieces === 1 ? `It is ${species.name} in the book.` : `${pieces} of its flitch are ${species.name} now.`,
    });
  }
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key variant="ghost" pending={pending} pendingWords="Writing" onClick={() => void write()}>
        Call it {species.name} in the book
      </Key>
    </>
  );
}
