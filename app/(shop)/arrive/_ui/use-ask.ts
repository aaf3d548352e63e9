'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import type { Reading } from '@/app/_server/reading';
import type { Scan } from '@/app/_ui/scanner/scan';
import { askBook } from '@/app/(shop)/arrive/actions';
import type { Problem } from '@/shared/result/answer';

/** A read that has not come by then counts as not coming: weak Wi-Fi can hang for minutes. */
const LONGEST_WAIT_MS = 12_000;

/**
 * Asks the book what a scan means. Scans that come while one is being asked wait their turn, so that none of a quick run
 * is lost; where the book cannot be reached the scan is kept, to be asked again.
 */
export function useAsk(onAnswer: (scanned: Scanned, scan: Scan) => void | Promise<void>) {
  const [asking, setAsking] = useState<Scan>();
  const [unasked, setUnasked] = useState<readonly Scan[]>([]);
  const [trouble, setTrouble] = useState<Problem>();
  const queue = useRef<Scan[]>([]);
  const busy = useRef(false);
  const latest = useRef(onAnswer);
  useEffect(() => {
    latest.current = onAnswer;
  });

  const work = useCallback(async () => {
    if (busy.current) return;
    busy.current = true;
    for (let scan = queue.current[0]; scan; scan = queue.current[0]) {
      setAsking(scan);
      // Where nothing came back there are no words of the book's to say.
      const asked: Reading<Scanned> | undefined = await inTime(
        askBook({ text: scan.text, symbology: scan.symbology }),
      ).catch(() => undefined);
      if (!asked?.ok) {
        setTrouble(asked?.problem);
        setUnasked([...queue.current]);
        break;
      }
      queue.current.shift();
      await latest.current(asked.answer, scan);
    }
    setAsking(undefined);
    busy.current = false;
  }, []);

  const ask = useCallback(
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
  }, []);
  return { ask, again, drop, asking, unasked, trouble };
}

function inTime<T>(answer: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('No answer in time.')), LONGEST_WAIT_MS);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
}
