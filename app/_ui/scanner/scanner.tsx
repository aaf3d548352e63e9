'use client';

import { useCallback, useEffect, useId, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import { cameraTroubleWords } from './camera-trouble';
import { giveFeedback, wakeSound } from './feedback';
import { Finder } from './finder';
import { PhotoKey } from './photo-key';
import { readPhoto } from './read-photo';
import type { Scan, ScanHandler } from './scan';
import { useScanHandler } from './scan-provider';
import styles from './scanner.module.css';
import { showCode } from './show-code';
import { TypedCode } from './typed-code';
import { cameraWasAllowed, useCamera } from './use-camera';
import { useScanLoop } from './use-scan-loop';

export interface ScannerProps {
  /** Takes every code read, by camera, photo, typing or a hand scanner. The same label is told once while it stays in view. */
  onScan: ScanHandler;
  /** What to point at, as a sentence: "Scan the tin you want to use." */
  prompt: string;
  /** A lower finder, for pages that show more than the scanner. */
  compact?: boolean;
}

const NO_DECODER = 'The part that reads codes could not be fetched. Check the connection, or type the code.';

/** The finder and the ways round it. While it is on the page it also takes what a hand scanner sends. */
export function Scanner({ onScan, prompt, compact = false }: ScannerProps) {
  const camera = useCamera();
  const [isTyping, setTyping] = useState(false);
  const [isReadingPhoto, setReadingPhoto] = useState(false);
  const [words, setWords] = useState('');
  const [last, setLast] = useState<Scan>();
  const headingId = useId();
  const { open } = camera;

  const take = useCallback(
    (scan: Scan) => {
      if (scan.source !== 'typed') giveFeedback('read');
      setWords('');
      setLast(scan);
      onScan(scan);
    },
    [onScan],
  );

  const loop = useScanLoop(camera.video, camera.state.kind === 'live', take);
  useScanHandler(take, { priority: SCANNER_PRIORITY });

  useEffect(() => {
    let left = false;
    void cameraWasAllowed().then((allowed) => {
      if (allowed && !left) open();
    });
    return () => {
      left = true;
    };
  }, [open]);

  async function takePhoto(file: File) {
    setWords('');
    setReadingPhoto(true);
    const outcome = await readPhoto(file).finally(() => setReadingPhoto(false));
    if (outcome.kind === 'read') return take(outcome.scan);
    giveFeedback('error');
    setWords(outcome.words);
  }

  const { state } = camera;
  const trouble = state.kind === 'trouble' ? cameraTroubleWords(state.trouble) : undefined;
  const isOpen = state.kind === 'live' || state.kind === 'opening';
  const hint = state.kind === 'live' && loop === 'loading' ? 'Getting ready to read…' : undefined;
  return (
    <section className={styles.scanner} aria-labelledby={headingId} data-compact={compact || undefined}>
      <h2 id={headingId} className={styles.prompt}>
        {prompt}
      </h2>
      <Finder video={camera.video} state={state} hint={hint}>
        {isOpen ? null : (
          <div className={styles.closed}>
            {trouble ? (
              <p role="alert">
                <strong>{trouble.what}</strong> {trouble.todo}
              </p>
            ) : null}
            <Key
              onClick={() => {
                void wakeSound();
                open();
              }}
            >
              Open camera
            </Key>
            <p className={styles.private}>What it sees stays on this device.</p>
          </div>
        )}
      </Finder>
      <p className={styles.heard} role="status">
        {last ? <LastRead scan={last} /> : null}
      </p>
      {loop === 'no-decoder' ? <p role="alert">{NO_DECODER}</p> : null}
      {words ? <p role="alert">{words}</p> : null}
      {isTyping ? (
        <TypedCode onCode={(scan) => take(scan)} onClose={() => setTyping(false)} />
      ) : (
        <div className={styles.keys}>
          {camera.torch === undefined ? null : (
            <Key variant="ghost" aria-pressed={camera.torch} onClick={camera.switchTorch}>
              {camera.torch ? 'Torch off' : 'Torch on'}
            </Key>
          )}
          <Key variant="ghost" onClick={() => setTyping(true)}>
            Type it
          </Key>
          <PhotoKey onPhoto={takePhoto} pending={isReadingPhoto} />
          {isOpen ? (
            <Key variant="ghost" onClick={camera.close}>
              Close camera
            </Key>
          ) : null}
        </div>
      )}
      {camera.choices.length > 1 ? (
        <label className={styles.choice}>
          Camera
          <select value={camera.chosen} onChange={(event) => open(event.currentTarget.value)}>
            {camera.choices.map((choice) => (
              <option key={choice.id} value={choice.id}>
                {choice.name}
              </option>
            ))}
          </select>
        </label>
      ) : null}
    </section>
  );
}

/** Above a page's own handler, because the scanner hands on to the page through `onScan`. */
const SCANNER_PRIORITY = 10;

function LastRead({ scan }: { scan: Scan }) {
  return (
    <>
      Read: <span className={styles.code}>{showCode(scan.text)}</span>
    </>
  );
}
