'use client';

import { useCallback, useRef, useState } from 'react';
import type { Sighting } from '@/app/_server/stocktake/note-seen';
import { freshKey } from '@/app/_ui/act/fresh-key';
import { problemOfPress } from '@/app/_ui/act/problem-of-press';
import type { Scan } from '@/app/_ui/scanner/scan';
import { seeAction } from '@/app/(shop)/stocktake/actions';
import type { Problem } from '@/shared/result/answer';

/**
 * Notes scans on a walk, one after the other, so that none of a quick run is lost. Where the book cannot be reached they
 * are kept, to be noted again; seeing a thing twice is seeing it once.
 */
export function useWalk(stocktake: number, onSeen: (sighting: Sighting) => void) {
  const [asking, setAsking] = useState<Scan>();
  const [unasked, setUnasked] = useState<readonly Scan[]>([]);
  const [problem, setProblem] = useState<Problem>();
  const queue = useRef<Scan[]>([]);
  const busy = useRef(false);

  const work = useCallback(async () => {
    if (busy.current) return;
    busy.current = true;
    setProblem(undefined);
    for (let scan = queue.current[0]; scan; scan = queue.current[0]) {
      setAsking(scan);
      const { text, symbology } = scan;
      const answer = await seeAction(freshKey(), { stocktake, text, symbology }).catch((error) => ({
        ok: false as const,
        problem: problemOfPress(error, navigator.onLine),
      }));
      if (!answer.ok) {
        setProblem(answer.problem);
        setUnasked([...queue.current]);
        break;
      }
      queue.current.shift();
      onSeen(answer.answer);
    }
    setAsking(undefined);
    busy.current = false;
  }, [stocktake, onSeen]);

  const see = useCallback(
    (scan: Scan) => {
      queue.current.push(scan);
      setUnasked([]);
      void work();
    },
    [work],
  );
  const again = useCallback(() => {
    setUnasked([]);
    void work();
  }, [work]);
  const drop = useCallback(() => {
    queue.current = [];
    setUnasked([]);
    setProblem(undefined);
  }, []);
  return { see, again, drop, asking, unasked, problem };
}
