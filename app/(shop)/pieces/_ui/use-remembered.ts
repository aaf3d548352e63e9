'use client';

import { useEffect, useState } from 'react';
import { recall, remember } from '@/app/_ui/scanner/device-memory';

/**
 * Typed fields that this device remembers under a name; `or` is a name looked under where the first has nothing. They
 * begin as `first`, as the server drew them.
 */
export function useRemembered<T extends Record<string, string>>(name: string, first: T, or?: string) {
  const [typed, setTyped] = useState(first);
  useEffect(() => {
    const kept = recall(name) ?? (or ? recall(or) : undefined);
    if (kept) setTyped((now) => ({ ...now, ...readKept(kept, now) }));
  }, [name, or]);
  function set(next: T) {
    setTyped(next);
    remember(name, JSON.stringify(next));
    if (or) remember(or, JSON.stringify(next));
  }
  return [typed, set] as const;
}

function readKept<T extends Record<string, string>>(text: string, like: T): Partial<T> {
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null) return {};
    const fields = Object.entries(kept).filter(([key, value]) => key in like && typeof value === 'string');
    return Object.fromEntries(fields) as Partial<T>;
  } catch {
    return {};
  }
}
