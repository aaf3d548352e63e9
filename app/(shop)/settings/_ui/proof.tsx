'use client';

import { useState } from 'react';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { type ProofAnswer, proveAction } from '@/app/(shop)/settings/actions';

const counted = (count: number, one: string, many: string) =>
  `${count.toLocaleString('en')} ${count === 1 ? one : many}`;

const NO_ANSWER: ProofAnswer = {
  ok: false,
  happened: 'The book could not be reached.',
  kept: 'Checking only reads: nothing was changed.',
  toDo: 'Come back into Wi-Fi and press again.',
};

/** Folds the whole ledger again and says whether everything in the book agrees with it. */
export function Proof() {
  const [answer, setAnswer] = useState<ProofAnswer>();
  const [pending, setPending] = useState(false);
  const prove = async () => {
    setPending(true);
    setAnswer(undefined);
    setAnswer(await proveAction().catch(() => NO_ANSWER));
    setPending(false);
  };
  return (
    <div className={styles.form}>
      <Key variant="ghost" pending={pending} pendingWords="Reading every entry again" onClick={prove}>
        Check the book
      </Key>
      {answer?.ok === false ? <PlainError {...answer} /> : null}
      {answer?.ok && answer.differing === 0 ? (
        <VerdictPanel
          word="use"
          size="small"
          headline={[
            'Every rule holds.',
            `${counted(answer.entries, 'entry', 'entries')}, ${counted(answer.movements, 'movement', 'movements')} and ${counted(answer.things, 'thing', 'things')} were checked.`,
          ]}
        />
      ) : null}
      {answer?.ok && answer.differing > 0 ? (
        <>
          <VerdictPanel
            word="stop"
            size="small"
            headline={[
              `${counted(answer.differing, 'thing differs', 'things differ')} from what the entries say.`,
              'The entries themselves are kept. Make a copy of the data folder, then run npm run rebuild.',
            ]}
          />
          <ul className={styles.points}>
            {answer.differences.map((each) => (
              <li key={`${each.rule} ${each.where} ${each.says}`}>
                {each.where}: {each.says} ({each.rule.replaceAll('-', ' ')})
              </li>
            ))}
          </ul>
          {answer.differing > answer.differences.length ? (
            <p>The first {answer.differences.length} are shown. npm run prove names them all.</p>
          ) : null}
        </>
      ) : null}
    </div>
  );
}
