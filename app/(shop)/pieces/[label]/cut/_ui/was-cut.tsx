'use client';

import Link from 'next/link';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

export interface WasCutProps {
  entryId: number;
  pieces: readonly { label: OwnLabelCode; words: string }[];
}

/** What a cut made: labels to be printed, pages to go to, and the way back while none has moved on. */
export function WasCut({ entryId, pieces }: WasCutProps) {
  const { run, pending, problem } = useAct(reverseAction);
  const [open, setOpen] = useState(false);
  const [why, setWhy] = useState('');
  const say = useNotice();
  const one = pieces.length === 1;
  return (
    <>
      <ul className={styles.made}>
        {pieces.map(({ label, words }) => (
          <li key={label}>
            <Link href={`/pieces/${label}`} className={styles.madeLink}>
              {printOwnLabel(label)}
            </Link>
            <span>{words}</span>
          </li>
        ))}
      </ul>
      <div className={styles.keys}>
        <LinkKey href={`/labels?codes=${pieces.map(({ label }) => label).join(',')}`}>
          {one ? 'Print its label' : `Print their ${pieces.length} labels`}
        </LinkKey>
        {open ? null : (
          <Key variant="ghost" onClick={() => setOpen(true)}>
            Undo the cut
          </Key>
        )}
      </div>
      {open ? (
        <form
          noValidate
          onSubmit={async (submit) => {
            submit.preventDefault();
            const answer = await run({ entryId, why });
            if (answer.ok) say({ words: 'The cut is reversed: the piece is whole again.' });
          }}
        >
          <TextField
            label="Why is it undone?"
            hint="The piece is whole again and these are gone. Both stay in the history."
            value={why}
            onChange={setWhy}
            maxLength={500}
            error={problem?.fields?.why}
            autoFocus
          />
          {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
          <div className={styles.keys}>
            <Key type="submit" pending={pending} pendingWords="Writing the opposite">
              Make it whole again
            </Key>
            <Key variant="ghost" onClick={() => setOpen(false)}>
              Leave it cut
            </Key>
          </div>
        </form>
      ) : null}
    </>
  );
}
