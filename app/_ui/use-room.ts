'use client';

import { useCallback } from 'react';

/**
 * Tells the page how much room an element at its lower edge takes, as a length of the root: what must not lie under it, or
 * over it, then knows without guessing. At twice the text size, and with long words, a bar is taller than any fixed number.
 */
export function useRoom(name: `--${string}`, lies: (element: HTMLElement) => boolean = always) {
  return useCallback(
    (element: HTMLElement | null) => {
      if (!element) return;
      const { style } = document.documentElement;
      const measure = () => {
        if (lies(element)) style.setProperty(name, `${element.offsetHeight}px`);
        else style.removeProperty(name);
      };
      const observer = new ResizeObserver(measure);
      observer.observe(element);
      return () => {
        observer.disconnect();
        style.removeProperty(name);
      };
    },
    [name, lies],
  );
}

const always = () => true;
