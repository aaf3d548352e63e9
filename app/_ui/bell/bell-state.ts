import { useSyncExternalStore } from 'react';
import { recall, remember } from '@/app/_ui/scanner/device-memory';

/** Whether this browser can ring at all, and if not why; or whether it was allowed, refused, or never asked. */
export type BellAble = 'unsupported' | 'not-secure' | 'denied' | 'not-asked' | 'allowed';

const listeners = new Set<() => void>();

/** What the browser says of notifications on this page. */
export function bellAble(): BellAble {
  if (!window.isSecureContext) return 'not-secure';
  if (!('Notification' in window)) return 'unsupported';
  const { permission } = Notification;
  return permission === 'granted' ? 'allowed' : permission === 'denied' ? 'denied' : 'not-asked';
}

/** Whether this device's bell is on: it was turned on here, and the browser still allows it. */
export function isBellOn(): boolean {
  return recall('bell') === 'on' && bellAble() === 'allowed';
}

export function turnBell(on: boolean): void {
  remember('bell', on ? 'on' : undefined);
  if (!on) remember('bell.lines', undefined);
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('focus', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('focus', listener);
  };
}

/** The bell's state for a component: `on`, or what the browser says; undefined until the page is awake. */
export function useBell(): 'on' | BellAble | undefined {
  return useSyncExternalStore(
    subscribe,
    () => (isBellOn() ? 'on' : bellAble()),
    () => undefined,
  );
}

/** Told when the bell is turned on or off, or the page is looked at again. */
export const onBellChange = subscribe;
