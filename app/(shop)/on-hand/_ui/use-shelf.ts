'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { findOnHand } from '@/app/(shop)/on-hand/actions';
import { type Ask, hrefOfAsk, readAsk } from '@/app/(shop)/on-hand/ask';
import type { Shelf } from '@/app/(shop)/on-hand/shelf';
import type { Problem } from '@/shared/result/answer';

/** Long enough not to ask for every letter of a quick typist, short enough not to be noticed. */
const PAUSE_MS = 180;

type Lost = { happened: string; toDo: string };

const UNREACHED: Lost = { happened: 'The book could not be reached.', toDo: 'Come back into Wi-Fi and try again.' };
const lostOf = ({ what, todo }: Problem): Lost => ({ happened: what, toDo: todo });

/** The shelf as it is searched: what is typed shows at once, the answer when it comes, and an overtaken answer is dropped. */
export function useShelf(first: { ask: Ask; shelf: Shelf }) {
  const [ask, setAsk] = useState(first.ask);
  const [shown, setShown] = useState(first);
  const [busy, setBusy] = useState<'finding' | 'more' | null>(null);
  /** What is the matter and what to do, where the book could not be asked. */
  const [lost, setLost] = useState<Lost>();
  const turn = useRef(0);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const find = useCallback(async (next: Ask) => {
    turn.current += 1;
    const mine = turn.current;
    setBusy('finding');
    try {
      const found = await findOnHand(next);
      if (mine !== turn.current) return;
      if (found.ok) setShown({ ask: next, shelf: found.answer });
      setLost(found.ok ? undefined : lostOf(found.problem));
    } catch {
      if (mine === turn.current) setLost(UNREACHED);
    }
    if (mine === turn.current) setBusy(null);
  }, []);

  const change = useCallback(
    (next: Ask, soon = false) => {
      setAsk(next);
      window.history.replaceState(null, '', hrefOfAsk(next));
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void find(next), soon ? PAUSE_MS : 0);
    },
    [find],
  );

  // Coming back to the page may bring an older drawing of it than its address says.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where the page is first drawn.
  useEffect(() => {
    const params = new URLSearchParams(window.location.search);
    const wanted = readAsk(Object.fromEntries(params));
    if (hrefOfAsk(wanted) !== hrefOfAsk(first.ask)) change(wanted);
    return () => clearTimeout(timer.current);
  }, []);

  const showMore = useCallback(async () => {
    const after = shown.shelf.next;
    if (after === null) return;
    const mine = turn.current;
    setBusy('more');
    try {
      const found = await findOnHand({ ...shown.ask, after });
      if (mine !== turn.current) return;
      setLost(found.ok ? undefined : lostOf(found.problem));
      if (!found.ok) return setBusy(null);
      const next = found.answer;
      setShown(({ ask: asked, shelf }) => ({
        ask: asked,
        shelf: {
          ...shelf,
          containers: [...shelf.containers, ...next.containers],
          pieces: [...shelf.pieces, ...next.pieces],
          next: next.next,
        },
      }));
    } catch {
      if (mine === turn.current) setLost(UNREACHED);
    }
    if (mine === turn.current) setBusy(null);
  }, [shown]);

  return { ask, shown, busy, lost, change, showMore, again: () => void find(ask) };
}
