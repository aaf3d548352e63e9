'use client';

import { useRouter } from 'next/navigation';
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef } from 'react';
import type { Scan, ScanHandler } from './scan';
import { WedgeListener } from './wedge-listener';

interface Registered {
  readonly handler: ScanHandler;
  readonly priority: number;
}

interface ScanContextValue {
  readonly register: (entry: Registered) => () => void;
  readonly dispatch: ScanHandler;
}

const ScanContext = createContext<ScanContextValue | undefined>(undefined);

/** Where a scan goes when no page takes it: the page that says what the code is. */
export function scanPath(scan: Scan): string {
  const query = new URLSearchParams({ code: scan.text });
  if (scan.symbology) query.set('sym', scan.symbology);
  return `/scan?${query}`;
}

/**
 * Listens for hand scanners on every page inside it and gives each scan to one handler: the one with the highest priority,
 * among equals the one registered last, which is the page on top. With none, the scan opens `/scan`.
 */
export function ScanProvider({ children }: { children: ReactNode }) {
  const router = useRouter();
  const entries = useRef<Registered[]>([]);

  const register = useCallback((entry: Registered) => {
    entries.current = [...entries.current, entry];
    return () => {
      entries.current = entries.current.filter((other) => other !== entry);
    };
  }, []);

  const dispatch = useCallback<ScanHandler>(
    (scan) => {
      const highest = Math.max(...entries.current.map((entry) => entry.priority));
      const taker = entries.current.findLast((entry) => entry.priority === highest);
      if (taker) taker.handler(scan);
      else router.push(scanPath(scan));
    },
    [router],
  );

  const value = useMemo(() => ({ register, dispatch }), [register, dispatch]);
  return (
    <ScanContext.Provider value={value}>
      <WedgeListener onScan={dispatch} />
      {children}
    </ScanContext.Provider>
  );
}

/** Takes the scans while the component is on the page. Ignored outside a `ScanProvider`. */
export function useScanHandler(
  handler: ScanHandler,
  { priority = 0, enabled = true }: { priority?: number; enabled?: boolean } = {},
): void {
  const context = useContext(ScanContext);
  const latest = useRef(handler);
  useEffect(() => {
    latest.current = handler;
  });
  useEffect(() => {
    if (!context || !enabled) return;
    return context.register({ priority, handler: (scan) => latest.current(scan) });
  }, [context, enabled, priority]);
}
