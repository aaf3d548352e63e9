'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** What is in the book now: its new labels, big, and what comes next. */
export function Done({
  labels,
  said,
  entryId,
  page,
  held,
  note,
  print,
  next,
  onNext,
}: {
  labels: readonly string[];
  said: string;
  entryId: number;
  page: { href: string; words: string };
  /** That its lot is held, and what to do with it. */
  held?: readonly [string, string];
  note?: string;
  /** The words of the key that prints. */
  print: string;
  next: string;
  onNext: () => void;
}) {
  const { run, pending, problem } = useAct(reverseAction);
  const [isUndone, setUndone] = useState(false);

  async function undo() {
    const answer = await run({ entryId, why: 'Booked in by mistake' });
    if (answer.ok) setUndone(true);
  }

  return (
    <>
      <div style={{ flex: 1 }}>
        <p role="status" className={styles.said}>
          {isUndone ? 'Taken back out of the book. The entry and its reversal both stay in the history.' : said}
        </p>
        {isUndone ? null : (
          <>
            {held ? <VerdictPanel word="stop" headline={held} size="small" /> : null}
            <ul className={styles.labels} data-few={labels.length <= 3 || undefined} aria-label="New labels">
              {labels.map((label) => (
                <li key={label}>
                  <a href={thingHref(label)}>{printOwnLabel(label as OwnLabelCode)}</a>
                </li>
              ))}
            </ul>
            {note ? <p className={styles.plain}>{note}</p> : null}
          </>
        )}
        {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      </div>
      <KeyBar>
        <Key onClick={onNext}>{next}</Key>
        {isUndone ? null : (
          <>
            <LinkKey variant="ghost" href={`/labels?codes=${labels.join(',')}`}>
              {print}
            </LinkKey>
            <LinkKey variant="ghost" href={page.href}>
              {page.words}
            </LinkKey>
            <Key variant="ghost" onClick={undo} pending={pending} pendingWords="Taking it back…">
              Take it back out
            </Key>
          </>
        )}
      </KeyBar>
    </>
  );
}
