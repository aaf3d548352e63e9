'use client';

import Link from 'next/link';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';

/** What was written, in words ready to show. */
export type Done = {
  entryId: number;
  /** "400 g for River desk". */
  title: string;
  lines: readonly string[];
  /** Its page, and the words of the link. */
  page: { href: string; words: string };
  /** What undoing does: "Put 400 g back". */
  undoWords: string;
  /** What is said when it is undone. */
  undoneWords: string;
  /** Still wanted from other containers, the next one first. */
  next?: { words: string; label: string; amountText: string };
};

export type PullDoneProps = { done: Done; onNext: (label: string, amountText: string) => void; onScan: () => void };

const REASONS = ['Wrong job', 'Wrong amount', 'Wrong container', 'Not used after all'];

/** What the book says now, the way on, and the way back. */
export function PullDone({ done, onNext, onScan }: PullDoneProps) {
  const [state, setState] = useState<'done' | 'undoing' | 'undone'>('done');
  const [why, setWhy] = useState('');
  const { run, pending, problem } = useAct(reverseAction);

  async function undo() {
    const answered = await run({ entryId: done.entryId, why });
    if (answered.ok) setState('undone');
    else giveFeedback('error');
  }

  if (state === 'undoing') {
    return (
      <form
        className={styles.stage}
        onSubmit={(submit) => {
          submit.preventDefault();
          void undo();
        }}
      >
        <div className={styles.narrow}>
          <h2 className={styles.question}>Why is it undone?</h2>
          <p className={styles.soft}>The entry stays in the history, struck through, with its opposite beside it.</p>
          <div className={styles.threeKeys}>
            {REASONS.map((reason) => (
              <Key key={reason} variant="ghost" aria-pressed={why === reason} onClick={() => setWhy(reason)}>
                {reason}
              </Key>
            ))}
          </div>
          <TextField
            label="The reason"
            value={why}
            onChange={setWhy}
            maxLength={500}
            error={problem?.fields?.why}
            enterKeyHint="done"
          />
          <ProblemNote problem={problem} />
        </div>
        <KeyBar>
          <Key type="submit" pending={pending} pendingWords="Writing the opposite">
            {done.undoWords}
          </Key>
          <Key variant="ghost" onClick={() => setState('done')}>
            Leave it
          </Key>
        </KeyBar>
      </form>
    );
  }

  const undone = state === 'undone';
  return (
    <div className={styles.stage}>
      <div className={styles.narrow} role="status">
        <h2 className={styles.doneTitle}>
          <span className={styles.soft}>{undone ? 'Undone' : 'In the book'}</span>
          {undone ? done.undoneWords : done.title}
        </h2>
        {undone ? (
          <p className={styles.doneLine}>Both entries stay in the history.</p>
        ) : (
          done.lines.map((line) => (
            <p key={line} className={styles.doneLine}>
              {line}
            </p>
          ))
        )}
        <p className={styles.doneLine}>
          <Link className={styles.sheetLink} href={done.page.href}>
            {done.page.words}
          </Link>
        </p>
      </div>
      <KeyBar>
        {done.next && !undone ? (
          <Key onClick={() => done.next && onNext(done.next.label, done.next.amountText)}>{done.next.words}</Key>
        ) : null}
        <Key variant={done.next && !undone ? 'ghost' : 'main'} onClick={onScan}>
          Scan the next
        </Key>
        {undone ? null : (
          <Key variant="ghost" onClick={() => setState('undoing')}>
            Undo
          </Key>
        )}
      </KeyBar>
    </div>
  );
}
