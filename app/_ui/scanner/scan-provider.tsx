'use client';

import { usePathname, useRouter } from 'next/navigation';
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { type EditedFields, watchFields } from './edited-fields';
import { giveFeedback } from './feedback';
import type { Scan, ScanHandler } from './scan';
import { ScanBar } from './scan-bar';
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
 * among equals the one registered last, which is the page on top. With none, the scan opens `/scan`, unless something on the
 * page was typed and would be lost: then it asks first.
 */
export function ScanProvider({ children }: { children: ReactNode }) {
  const router = useRouter();
  const path = usePathname();
  const entries = useRef<Registered[]>([]);
  const edited = useRef<EditedFields>(undefined);
  const [asked, setAsked] = useState<{ readonly scan: Scan; readonly path: string }>();

  useEffect(() => {
    const fields = watchFields(document);
    edited.current = fields;
    return fields.stop;
  }, []);

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
      if (taker) return taker.handler(scan);
      if (!edited.current?.any()) return router.push(scanPath(scan));
      giveFeedback('read');
      setAsked({ scan, path });
    },
    [router, path],
  );

  const value = useMemo(() => ({ register, dispatch }), [register, dispatch]);
  return (
    <ScanContext.Provider value={value}>
      <WedgeListener onScan={dispatch} />
      {asked?.path === path ? (
        <ScanBar
          scan={asked.scan}
          onOpen={() => {
            setAsked(undefined);
            router.push(scanPath(asked.scan));
          }}
          onStay={() => setAsked(undefined)}
        />
      ) : null}
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
