'use client';

import { useEffect, useRef, useState } from 'react';
import { giveFeedback } from './feedback';
import { type FieldMemory, isField, rememberField } from './field-memory';
import type { ScanHandler } from './scan';
import styles from './scanner.module.css';
import { splitAimPrefix } from './split-aim-prefix';
import { pressWedgeKey, type WedgeKey, wedgeWaking } from './wedge-detector';

const BROKEN_WORDS = 'The hand scanner dropped part of that code. Nothing was taken: scan it again.';
const WORDS_STAY_MS = 8000;

/**
 * Hears a USB or Bluetooth scanner that types, anywhere on the page. What it types into a focused field goes to the scan
 * handler, and the field gets back what it held. The scanner must end each code with Enter or Tab and be set to the
 * computer's own keyboard country.
 */
export function WedgeListener({ onScan }: { onScan: ScanHandler }) {
  const handler = useRef(onScan);
  const [isBroken, setBroken] = useState(false);

  useEffect(() => {
    handler.current = onScan;
  });

  useEffect(() => {
    let state = wedgeWaking(performance.now());
    let memory: FieldMemory | undefined;
    const swallowed = new Set<string>();

    const hear = (event: KeyboardEvent) => {
      const isUp = event.type === 'keyup';
      if (isUp && swallowed.delete(event.code)) event.preventDefault();
      if (isUp && event.key !== 'Alt') return;
      const heard = pressWedgeKey(state, asWedgeKey(event, isUp));
      state = heard.state;
      switch (heard.decision.kind) {
        case 'typing':
          return;
        case 'start':
          memory = isField(event.target) ? rememberField(event.target) : undefined;
          return;
        case 'burst':
          // Shortcuts and pressed buttons are nobody's wish at this speed. A field is put right at the end instead.
          if (memory === undefined || event.ctrlKey) swallow(event);
          return;
        case 'broken':
          swallow(event);
          memory?.restore();
          giveFeedback('error');
          setBroken(true);
          return;
        case 'scan': {
          swallow(event);
          memory?.restore();
          setBroken(false);
          handler.current({ ...splitAimPrefix(heard.decision.text), source: 'wedge' });
        }
      }
    };

    const swallow = (event: KeyboardEvent) => {
      event.preventDefault();
      event.stopImmediatePropagation();
      if (event.type === 'keydown') swallowed.add(event.code);
    };

    // Capturing on the window comes before every other listener, so the end key submits no form.
    window.addEventListener('keydown', hear, true);
    window.addEventListener('keyup', hear, true);
    return () => {
      window.removeEventListener('keydown', hear, true);
      window.removeEventListener('keyup', hear, true);
    };
  }, []);

  useEffect(() => {
    if (!isBroken) return;
    const timer = setTimeout(() => setBroken(false), WORDS_STAY_MS);
    return () => clearTimeout(timer);
  }, [isBroken]);

  return (
    <p role="alert" className={styles.broken} hidden={!isBroken}>
      {isBroken ? BROKEN_WORDS : ''}
    </p>
  );
}

function asWedgeKey(event: KeyboardEvent, up: boolean): WedgeKey {
  const isComposing = event.isComposing || event.key === 'Process' || event.key === 'Unidentified';
  return {
    key: event.key,
    code: event.code,
    timeStamp: event.timeStamp,
    target: isComposing ? 'composing' : isField(event.target) ? 'field' : 'page',
    ctrl: event.ctrlKey,
    alt: event.altKey,
    meta: event.metaKey,
    repeat: event.repeat,
    up,
  };
}
