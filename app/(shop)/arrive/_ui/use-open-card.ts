'use client';

import { useCallback, useRef, useState } from 'react';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import type { Card } from '@/app/(shop)/arrive/card';

type Draft = { readonly card: Card; readonly from: string };

const NAME = 'arrive-card';
const VERSION = 1;

/**
 * The arrival card that is open, and the one that was left open before, until it is gone on with or let go. `from` is what
 * began the page: a card that began with the very same is open again at once.
 */
export function useOpenCard(from: string) {
  const [card, setCardState] = useState<Card>();
  const [left, setLeftState] = useState<Card>();
  // Scans come in while the screen is being drawn, so the cards they meet are kept beside it.
  const latest = useRef<Card>(undefined);
  const leftOpen = useRef<Card>(undefined);

  const setLeft = useCallback((next: Card | undefined) => {
    leftOpen.current = next;
    setLeftState(next);
  }, []);

  const setCard = useCallback(
    (next: Card | undefined) => {
      latest.current = next;
      setCardState(next);
      if (next) setLeft(undefined);
      // A card that was left before stays kept while nothing else is open.
      if (next || !leftOpen.current) keepDraft<Draft>(NAME, VERSION, next && { card: next, from });
    },
    [from, setLeft],
  );

  const dropLeft = useCallback(() => {
    setLeft(undefined);
    keepDraft(NAME, VERSION, undefined);
  }, [setLeft]);

  /** Reads what was kept; true where it began with the same as this page. Once, when the page opens. */
  const recallLeft = useCallback((): boolean => {
    const draft = recallDraft<Draft>(NAME, VERSION);
    if (!draft) return false;
    setLeft(draft.card);
    return from !== '' && draft.from === from;
  }, [from, setLeft]);

  return { card, latest, setCard, left, leftOpen, recallLeft, dropLeft };
}
