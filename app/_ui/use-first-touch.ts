import { useEffect } from 'react';

/**
 * Does something once, with the first touch or key on the page: what a first visit does not have to load is fetched then,
 * before anybody has found the label. `then` has to be the same function each time.
 */
export function useFirstTouch(then: () => void): void {
  useEffect(() => {
    const done = new AbortController();
    const once = () => {
      done.abort();
      then();
    };
    for (const touch of ['pointerdown', 'keydown'] as const) {
      window.addEventListener(touch, once, { capture: true, passive: true, signal: done.signal });
    }
    return () => done.abort();
  }, [then]);
}
