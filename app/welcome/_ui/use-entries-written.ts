import { useEffect, useState } from 'react';

const EVERY_MS = 700;

/** How many entries are in the book by now, asked again and again while `waiting`. */
export function useEntriesWritten(waiting: boolean): number {
  const [entries, setEntries] = useState(0);
  useEffect(() => {
    if (!waiting) return;
    const ask = async () => {
      try {
        const answer: unknown = await (await fetch('/welcome/progress')).json();
        if (typeof answer === 'object' && answer !== null && 'entries' in answer)
          setEntries(Number(answer.entries) || 0);
      } catch {
        // The number only comforts: when it cannot be had, the last one stays.
      }
    };
    const timer = setInterval(ask, EVERY_MS);
    return () => clearInterval(timer);
  }, [waiting]);
  return entries;
}
