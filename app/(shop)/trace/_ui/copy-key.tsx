'use client';

import { useRef, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';

/** Copies a text; where the browser does not let a page copy, the text is shown, chosen, to be copied by hand. */
export function CopyKey({ text, children }: { text: string; children: string }) {
  const [isShown, setShown] = useState(false);
  const area = useRef<HTMLTextAreaElement>(null);
  const say = useNotice();
  return (
    <>
      <div className={styles.switch}>
        <Key
          variant="ghost"
          onClick={async () => {
            try {
              await navigator.clipboard.writeText(text);
              say({ words: 'Copied. Paste it into your message.' });
            } catch {
              setShown(true);
              requestAnimationFrame(() => area.current?.select());
            }
          }}
        >
          {children}
        </Key>
      </div>
      {isShown ? (
        <textarea
          ref={area}
          readOnly
          className={styles.copied}
          aria-label="The list, to be copied"
          rows={Math.min(12, text.split('\n').length + 1)}
          value={text}
        />
      ) : null}
    </>
  );
}
