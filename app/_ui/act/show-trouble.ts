'use client';

import { type RefObject, useEffect } from 'react';
import type { Problem } from '@/shared/result/answer';

/**
 * Brings what was refused into sight: the first marked field, opened out of its fold and focused, or else the sentences
 * themselves. On a phone the key is far from the field that is wrong, and a press that seems to do nothing is pressed again.
 */
export function useShowTrouble(form: RefObject<HTMLElement | null>, problem: Problem | undefined): void {
  useEffect(() => {
    if (!problem || !form.current) return;
    const marked = form.current.querySelector<HTMLElement>('[aria-invalid="true"]');
    const words = form.current.querySelector<HTMLElement>('[role="alert"]:not([hidden])');
    const fold = marked?.closest('details');
    if (fold) fold.open = true;
    (marked ?? words)?.scrollIntoView({ block: 'center' });
    marked?.focus({ preventScroll: true });
  }, [form, problem]);
}
