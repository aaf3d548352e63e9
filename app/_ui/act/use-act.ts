'use client';

import { useCallback, useRef, useState } from 'react';
import { freshKey } from '@/app/_ui/act/fresh-key';
import { type HeldPress, heldPress, holdPress } from '@/app/_ui/act/held-press';
import { mayBeWritten, problemOfPress } from '@/app/_ui/act/problem-of-press';
import type { Answer, Problem } from '@/shared/result/answer';

/**
 * Runs an action of the server for a form or a key. A press that got no answer, or one that leaves open whether it was
 * written, keeps its idempotency key, so pressing again with the same input cannot write it twice; another input, or a
 * success, takes a new key. With `keepAs` the press
 * is remembered under that name on the device, so that this holds over a reload too.
 */
export function useAct<I, A>(
  action: (key: string, input: I) => Promise<Answer<A>>,
  { keepAs }: { keepAs?: string } = {},
) {
  const [pending, setPending] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const held = useRef<HeldPress>(undefined);
  const run = useCallback(
    async (input: I): Promise<Answer<A>> => {
      const request = JSON.stringify(input, (_, value) =>
        value instanceof Blob ? `${value instanceof File ? value.name : ''}/${value.size}/${value.type}` : value,
      );
      if (keepAs) held.current ??= heldPress(keepAs);
      if (held.current?.request !== request) held.current = { key: freshKey(), request };
      if (keepAs) holdPress(keepAs, held.current);
      setPending(true);
      setProblem(undefined);
      let answer: Answer<A>;
      try {
        answer = await action(held.current.key, input);
      } catch (error) {
        answer = { ok: false, problem: problemOfPress(error, navigator.onLine) };
      }
      if (answer.ok || !mayBeWritten(answer.problem)) {
        held.current = undefined;
        if (keepAs) holdPress(keepAs, undefined);
      }
      setPending(false);
      if (!answer.ok) setProblem(answer.problem);
      return answer;
    },
    [action, keepAs],
  );
  const forget = useCallback(() => setProblem(undefined), []);
  return { run, pending, problem, forget };
}
