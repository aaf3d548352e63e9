import type { VerdictWord } from '@/app/_ui/verdict/word';

/** The shape of a verdict: a round stamp with a tick, a diamond with a mark, a square with a bar. Drawn beside its word,
 * so it is silent to screen readers. The same shapes serve from 18 px in lists to 92 px on Pull. */
export function VerdictMark({ word, size = 24 }: { word: VerdictWord; size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 24 24" aria-hidden="true" focusable="false" style={{ flex: 'none' }}>
      {word === 'use' ? (
        <>
          <circle cx="12" cy="12" r="11" fill="var(--use)" />
          <path d="M6.4 12.4l3.9 3.9 7.3-8.3" stroke="var(--use-bg)" strokeWidth="2.8" fill="none" />
        </>
      ) : null}
      {word === 'care' ? (
        <>
          <path d="M12 .6L23.4 12 12 23.4.6 12z" fill="var(--care)" />
          <path d="M12 6v7.4" stroke="var(--care-bg)" strokeWidth="2.8" />
          <circle cx="12" cy="16.9" r="1.7" fill="var(--care-bg)" />
        </>
      ) : null}
      {word === 'stop' ? (
        <>
          <path d="M1.5 1.5h21v21h-21z" fill="var(--stop)" />
          <path d="M5.5 12h13" stroke="var(--stop-bg)" strokeWidth="4" />
        </>
      ) : null}
    </svg>
  );
}
