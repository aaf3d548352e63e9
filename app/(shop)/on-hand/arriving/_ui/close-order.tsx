'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { closeArrivingAction } from '@/app/(shop)/on-hand/arriving/actions';

/** Closes an order: it came and is scanned into the book, or it never will. */
export function CloseOrder({ arrivingId, isWood }: { arrivingId: number; isWood: boolean }) {
  const { run, pending, problem } = useAct(closeArrivingAction);
  const say = useNotice();
  const [why, setWhy] = useState('');
  async function came() {
    const answered = await run({ arrivingId, how: 'came', why: '' });
    if (answered.ok) say({ words: `${answered.answer.name} came. Scan it into the book under Arrive.` });
  }
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.acts}>
        <Key variant="ghost" pending={pending} pendingWords="Closing" onClick={() => void came()}>
          It came
        </Key>
        <LinkKey variant="ghost" href={isWood ? '/arrive/wood' : '/arrive'}>
          Scan it in
        </LinkKey>
      </div>
      <Fold title="It is not coming">
        <ActForm<{ name: string }>
          action={closeArrivingAction}
          input={{ arrivingId, how: 'never', why }}
          words="It is not coming"
          variant="stop"
          done="The order is closed. What waited for it is short again."
        >
          {(errors) => <TextField label="Why" value={why} onChange={setWhy} error={errors.why} maxLength={500} />}
        </ActForm>
      </Fold>
    </>
  );
}
