'use client';

import { type ReactNode, useRef } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key, type KeyVariant } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';
import type { Answer } from '@/shared/result/answer';

type Errors = Readonly<Record<string, string | undefined>>;

export interface ActFormProps<A> {
  action: (key: string, input: unknown) => Promise<Answer<A>>;
  /** What will be written, as the form stands. */
  input: unknown;
  /** What the key will do: "Move it to cabinet 2". */
  words: ReactNode;
  pendingWords?: string;
  variant?: KeyVariant;
  /** What was done, said once it is in the book; it may depend on the answer. */
  done: string | ((answer: A) => string);
  /** Clears the form for the next time. */
  onDone?: () => void;
  /** The fields, given what is wrong beside each. */
  children: (errors: Errors) => ReactNode;
}

/** One decision: its fields, its key, and what came of it. It folds away once it is written; a mistake is reversed from the history. */
export function ActForm<A>({
  action,
  input,
  words,
  pendingWords = 'Writing',
  variant,
  done,
  onDone,
  children,
}: ActFormProps<A>) {
  const { run, pending, problem } = useAct<unknown, A>(action);
  const say = useNotice();
  const form = useRef<HTMLFormElement>(null);
  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onSubmit={async (submit) => {
        submit.preventDefault();
        const answer = await run(input);
        if (!answer.ok) return;
        const fold = form.current?.closest('details');
        if (fold) fold.open = false;
        fold?.querySelector('summary')?.focus();
        onDone?.();
        say({ words: typeof done === 'string' ? done : done(answer.answer) });
      }}
    >
      {children(problem?.fields ?? {})}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        <Key type="submit" variant={variant} pending={pending} pendingWords={pendingWords}>
          {words}
        </Key>
      </div>
    </form>
  );
}
