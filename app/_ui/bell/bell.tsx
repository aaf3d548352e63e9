'use client';

import { useEffect } from 'react';
import { isBellOn, onBellChange } from '@/app/_ui/bell/bell-state';

const EVERY_MS = 10 * 60_000;

/** Rings for what is new in Watch while the book is open, where this device's bell is on. Its script comes only then. */
export function Bell() {
  useEffect(() => {
    let lastLook = 0;
    const look = async () => {
      if (!isBellOn() || Date.now() - lastLook < EVERY_MS - 1000) return;
      lastLook = Date.now();
      const { lookAndRing } = await import('@/app/_ui/bell/ring');
      await lookAndRing();
    };
    const later = () => void look().catch(() => undefined);
    later();
    const timer = setInterval(later, EVERY_MS);
    const stop = onBellChange(later);
    return () => {
      clearInterval(timer);
      stop();
    };
  }, []);
  return null;
}
