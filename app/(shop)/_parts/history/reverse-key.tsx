'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';
import styles from '@/app/(shop)/_parts/history/history.module.css';

/** Puts one entry right by its opposite, with a reason asked for in place. */
export function ReverseKey({ entryId, what }: { entryId: number; what: string }) {
  const [open, setOpen] = useState(false);
  const [why, setWhy] = useState('');
  const { run, pending, problem, forget } = useAct(reverseAction);
  const say = useNotice();

  if (!open) {
    return (
      <button type="button" className={styles.quiet} aria-label={`Reverse: ${what}`} onClick={() => setOpen(true)}>
        Reverse
      </button>
    );
  }
  return (
    <form
      className={styles.reverse}
      data-open
      onSubmit={async (submit) => {
        submit.preventDefault();
        const answer = await run({ entryId, why });
        if (!answer.ok) return;
        setOpen(false);
        say({ words: `Entry ${entryId} is reversed. Both stay in the history.` });
      }}
    >
      <TextField
        label="Why is it reversed?"
        hint="The entry stays, struck through, and its opposite is written."
        value={why}
        onChange={setWhy}
        maxLength={500}
        error={problem?.fields?.why}
        autoFocus
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        <Key type="submit" pending={pending} pendingWords="Writing the opposite">
          Reverse it
        </Key>
        <Key
          variant="ghost"
          onClick={() => {
            setOpen(false);
            forget();
          }}
        >
          Leave it
        </Key>
      </div>
    </form>
  );
}
