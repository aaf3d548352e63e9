'use client';

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import type { ScanHandler } from './scan';
import styles from './scanner.module.css';
import { splitAimPrefix } from './split-aim-prefix';

/** One big field for a code written by hand or pasted. */
export function TypedCode({
  onCode,
  onClose,
  start,
}: {
  onCode: ScanHandler;
  onClose: () => void;
  /** What stands there at first, and the character to put right. */
  start?: { readonly text: string; readonly at: number };
}) {
  const [text, setText] = useState(start?.text ?? '');
  const [isEmpty, setEmpty] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const at = start?.at;

  useEffect(() => {
    if (at === undefined) return;
    field.current?.focus();
    field.current?.setSelectionRange(at, at + 1);
  }, [at]);

  function submit(event: FormEvent) {
    event.preventDefault();
    const code = text.trim();
    setEmpty(code === '');
    if (code === '') return;
    setText('');
    onCode({ ...splitAimPrefix(code), source: 'typed' });
  }

  return (
    <form className={styles.typed} onSubmit={submit}>
      <label className={styles.typedLabel}>
        The code, as printed under the bars
        <input
          ref={field}
          className={styles.typedField}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
          // biome-ignore lint/a11y/noAutofocus: the field opens on the press of its own key, so the typing goes there
          autoFocus
          autoComplete="off"
          autoCorrect="off"
          autoCapitalize="characters"
          spellCheck={false}
          enterKeyHint="done"
          aria-invalid={isEmpty || undefined}
        />
      </label>
      {isEmpty ? <p role="alert">Type the code first.</p> : null}
      <div className={styles.keys}>
        <Key type="submit">Look it up</Key>
        <Key variant="ghost" onClick={onClose}>
          Stop typing
        </Key>
      </div>
    </form>
  );
}
