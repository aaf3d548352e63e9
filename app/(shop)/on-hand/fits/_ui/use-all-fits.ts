'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { FitsLine } from '@/app/(shop)/on-hand/fits/fits-line';
import type { FitsView } from '@/app/(shop)/on-hand/fits/fits-view';
import type { Problem } from '@/shared/result/answer';

/** How the rest of the wood is being looked at. */
export type Search =
  | { readonly state: 'whole' | 'stopped' }
  | { readonly state: 'looking'; readonly done: number; readonly of: number }
  | { readonly state: 'failed'; readonly problem: Problem | undefined };

/**
 * Asks for all the wood where the first answer covers only a part of it, and shows how far it is; can be stopped, and
 * begun again where the network failed. What was there first stays until the whole is there.
 */
export function useAllFits(first: FitsView, isPart: boolean, query: string) {
  const [view, setView] = useState(first);
  const [search, setSearch] = useState<Search>({ state: isPart ? 'looking' : 'whole', done: 0, of: 0 });
  const running = useRef<AbortController>(undefined);

  const look = useCallback(async () => {
    running.current?.abort();
    const asked = new AbortController();
    running.current = asked;
    setSearch({ state: 'looking', done: 0, of: 0 });
    try {
      const answer = await fetch(`/api/fits?${query}`, { signal: asked.signal });
      if (!answer.ok || !answer.body) throw new Error(`The answer was ${answer.status}.`);
      let isWhole = false;
      for await (const line of linesOf(answer.body)) {
        if ('view' in line) {
          isWhole = true;
          setView(line.view);
          setSearch({ state: 'whole' });
        } else if ('problem' in line) {
          isWhole = true;
          setSearch({ state: 'failed', problem: line.problem });
        } else setSearch({ state: 'looking', ...line });
      }
      if (!isWhole) throw new Error('The answer broke off.');
    } catch {
      if (!asked.signal.aborted) setSearch({ state: 'failed', problem: undefined });
    }
  }, [query]);

  useEffect(() => {
    if (isPart) void look();
    return () => running.current?.abort();
  }, [isPart, look]);

  const stop = () => {
    running.current?.abort();
    setSearch({ state: 'stopped' });
  };
  return { view, search, stop, again: look };
}

async function* linesOf(body: ReadableStream<Uint8Array>): AsyncGenerator<FitsLine> {
  const reader = body.pipeThrough(new TextDecoderStream() as ReadableWritablePair<string, Uint8Array>).getReader();
  let rest = '';
  for (;;) {
    const { done, value } = await reader.read();
    rest += value ?? '';
    const lines = rest.split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) if (line !== '') yield JSON.parse(line) as FitsLine;
    if (done) return;
  }
}
