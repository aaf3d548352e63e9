'use client';

import { useEffect, useRef } from 'react';

/** One page shows several screens in turn: each begins at its top, and the keyboard with it, as a page of its own would. */
export function useTopOf(screen: string): void {
  const last = useRef(screen);
  useEffect(() => {
    if (last.current === screen) return;
    last.current = screen;
    window.scrollTo(0, 0);
    document.getElementById('page')?.focus({ preventScroll: true });
  }, [screen]);
}
