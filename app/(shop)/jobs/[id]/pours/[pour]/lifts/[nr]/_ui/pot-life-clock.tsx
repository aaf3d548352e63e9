'use client';

import { useEffect, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';

/** A bucket that was left this long is not being poured: the clock is put away. */
const LONGEST_MS = 24 * 60 * 60_000;

export type PotLifeClockProps = {
  name: string;
  mixedAt: string;
  minutes: number;
  /** What the sheet measured, `40 minutes with 100 g`, where that is less than is in the bucket: then nothing is promised. */
  measuredWith?: string | undefined;
};

/**
 * How long a mixed bucket can still be worked. It runs from when the second part was weighed, which the book knows, so it
 * goes on over a reload and on another phone; stirred later, it is started anew and this device remembers. A bucket larger
 * than any the sheet measured thickens sooner than its minutes, nobody knows when: the clock counts up.
 */
export function PotLifeClock({ name, mixedAt, minutes, measuredWith }: PotLifeClockProps) {
  const [now, setNow] = useState<number>();
  const [started, setStarted] = useState<number>();
  useEffect(() => {
    const kept = Number(recall(name) ?? 0) || 0;
    const inBook = Date.parse(mixedAt);
    setStarted(Math.max(kept, inBook));
    setNow(Date.now());
    const tick = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(tick);
  }, [name, mixedAt]);
  const left = started === undefined || now === undefined ? undefined : started + minutes * 60_000 - now;
  const over = left !== undefined && left <= 0;
  useEffect(() => {
    if (over && left > -2000) giveFeedback('stop');
  }, [over, left]);
  if (left !== undefined && left < -LONGEST_MS) return null;
  return (
    <div className={styles.clock} data-over={over || undefined}>
      <p role="timer" aria-live="off">
        {left === undefined ? (
          measuredWith ? (
            `The sheet measured ${measuredWith}, less than is in here.`
          ) : (
            <>
              <b className={styles.left}>{minutes}:00</b> to work it
            </>
          )
        ) : measuredWith ? (
          <>
            <b className={styles.left}>{sayClock(minutes * 60_000 - left)}</b>{' '}
            {over
              ? `since it was mixed: too long even for what the sheet measured, ${measuredWith}. If it is warm or stringy, do not pour it.`
              : `since it was mixed. The sheet measured ${measuredWith}: this much thickens sooner. Pour it out now.`}
          </>
        ) : over ? (
          <>
            <b className={styles.left}>{sayClock(-left)}</b> past its pot life. If it is warm or stringy, do not pour
            it.
          </>
        ) : (
          <>
            <b className={styles.left}>{sayClock(left)}</b> left of {minutes} minutes to work it
          </>
        )}
      </p>
      <Key
        variant="ghost"
        onClick={() => {
          const at = Date.now();
          remember(name, String(at));
          setStarted(at);
          setNow(at);
        }}
      >
        Stirred now: start again
      </Key>
    </div>
  );
}

function sayClock(ms: number): string {
  const seconds = Math.max(0, Math.round(ms / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
