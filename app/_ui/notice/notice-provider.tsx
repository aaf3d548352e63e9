'use client';

import { usePathname } from 'next/navigation';
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react';
import styles from '@/app/_ui/notice/notice.module.css';

export interface Notice {
  /** What was done, as a sentence: "2 tins are in the book, cabinet 2." */
  words: string;
  /** A way back. The words name it: "Reverse". */
  undo?: { words: string; run: () => void | Promise<void> };
}

type SayNotice = (notice: Notice) => void;

const PLAIN_TIME = 7_000;
const UNDO_TIME = 20_000;
/** A press may lead to another page by itself; its notice goes along. Later than this the reader has gone on. */
const SAME_PRESS = 2_000;

const NoticeContext = createContext<SayNotice | null>(null);

/** Says one short sentence at a time, above the keys of the page, and to screen readers when they are free. */
export function NoticeProvider({ children }: { children: ReactNode }) {
  const [notice, setNotice] = useState<(Notice & { id: number }) | null>(null);
  const [held, setHeld] = useState(false);
  const count = useRef(0);
  const saidAt = useRef(0);
  const path = usePathname();
  const lastPath = useRef(path);

  const say = useCallback<SayNotice>((next) => {
    count.current += 1;
    saidAt.current = performance.now();
    setHeld(false);
    setNotice({ ...next, id: count.current });
  }, []);
  const close = useCallback(() => setNotice(null), []);

  useEffect(() => {
    if (!notice || held) return;
    const timer = setTimeout(close, notice.undo ? UNDO_TIME : PLAIN_TIME);
    return () => clearTimeout(timer);
  }, [notice, held, close]);

  useEffect(() => {
    if (lastPath.current === path) return;
    lastPath.current = path;
    if (performance.now() - saidAt.current > SAME_PRESS) close();
  }, [path, close]);

  const undo = notice?.undo;
  const hold = useMemo(
    () => ({
      onMouseEnter: () => setHeld(true),
      onMouseLeave: () => setHeld(false),
      onFocus: () => setHeld(true),
      onBlur: () => setHeld(false),
    }),
    [],
  );

  return (
    <NoticeContext.Provider value={say}>
      {children}
      <div className={styles.place} data-shown={notice ? true : undefined} {...hold}>
        <p role="status" className={styles.words}>
          {notice ? <span key={notice.id}>{notice.words}</span> : null}
        </p>
        {notice ? (
          <div className={styles.keys}>
            {undo ? (
              <button
                type="button"
                className={styles.key}
                onClick={() => {
                  close();
                  void undo.run();
                }}
              >
                {undo.words}
              </button>
            ) : null}
            <button type="button" className={styles.key} onClick={close}>
              Close
            </button>
          </div>
        ) : null}
      </div>
    </NoticeContext.Provider>
  );
}

/** The way to say a notice: `const say = useNotice(); say({ words: 'Held.' })`. */
export function useNotice(): SayNotice {
  const say = useContext(NoticeContext);
  if (!say) throw new Error('useNotice is used outside NoticeProvider');
  return say;
}
