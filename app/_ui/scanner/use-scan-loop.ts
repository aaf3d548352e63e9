'use client';

import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Decoder } from './decoder';
import { NOTHING_IN_VIEW, seeCode } from './repeat-filter';
import { type Scan, scanOf } from './scan';

export type LoopState = 'waiting' | 'loading' | 'looking' | 'no-decoder';

/** A rest between frames keeps the phone cool; the slow decoder gets a longer one so that the page can be used. */
const REST_MS = 40;
const NO_FRAME_MS = 250;
const FAILURES_ALLOWED = 5;

/**
 * Looks for codes in the video while `running`, one frame at a time. The decoder is fetched when it first runs and ended when
 * it stops.
 */
export function useScanLoop(
  video: RefObject<HTMLVideoElement | null>,
  running: boolean,
  onRead: (scan: Scan) => void,
): LoopState {
  const [state, setState] = useState<LoopState>('waiting');
  const handler = useRef(onRead);
  useEffect(() => {
    handler.current = onRead;
  });

  useEffect(() => {
    if (!running) return;
    let stopped = false;
    let decoder: Decoder | undefined;
    setState('loading');

    const run = async () => {
      const { openDecoder } = await import('./open-decoder');
      const opened = await openDecoder();
      decoder = opened;
      if (stopped) return opened.close();
      setState('looking');
      await look(
        opened,
        video,
        () => stopped,
        (scan) => handler.current(scan),
      );
    };
    run().catch((cause) => {
      if (stopped) return;
      console.warn('The decoder could not be used.', cause);
      setState('no-decoder');
    });

    return () => {
      stopped = true;
      decoder?.close();
      setState('waiting');
    };
  }, [running, video]);

  return state;
}

async function look(
  decoder: Decoder,
  video: RefObject<HTMLVideoElement | null>,
  isStopped: () => boolean,
  onRead: (scan: Scan) => void,
): Promise<void> {
  let inView = NOTHING_IN_VIEW;
  let number = 0;
  let failures = 0;
  while (!isStopped()) {
    const element = video.current;
    if (!element || element.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) {
      await rest(NO_FRAME_MS);
      continue;
    }
    const codes = await decoder.readFrame(element, number).catch((cause: unknown) => {
      // One frame may be lost, as when the phone turns; a row of them means the decoder is gone.
      failures += 1;
      if (failures >= FAILURES_ALLOWED) throw cause;
      return undefined;
    });
    if (isStopped()) return;
    if (codes) failures = 0;
    const code = codes?.[0];
    number += 1;
    if (code) {
      number = 0;
      const seen = seeCode(`${code.symbology}${code.text}`, performance.now(), inView);
      inView = seen.inView;
      if (seen.isNew) onRead(scanOf(code, 'camera'));
    }
    await rest(REST_MS);
  }
}

function rest(ms: number): Promise<void> {
  return new Promise((done) => setTimeout(done, ms));
}
