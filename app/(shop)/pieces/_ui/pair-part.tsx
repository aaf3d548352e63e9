'use client';

import Link from 'next/link';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/pieces/_ui/pair.module.css';
import { pairAction, partAction } from '@/app/(shop)/pieces/[label]/cut/actions';
import type { PairChoice } from '@/app/(shop)/pieces/pair-choices';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

export interface PairPartProps {
  label: OwnLabelCode;
  pairedWith: { label: OwnLabelCode; inStock: boolean } | null;
  /** The likeliest first. */
  choices: readonly PairChoice[];
}

/** The other half for a bookmatch: which it is, or which sister of the flitch it could be. */
export function PairPart({ label, pairedWith, choices }: PairPartProps) {
  const pair = useAct(pairAction);
  const part = useAct(partAction);
  const say = useNotice();
  const problem = pair.problem ?? part.problem;
  const other = pairedWith ? printOwnLabel(pairedWith.label) : '';
  const isWhole = pairedWith?.inStock === true;
  if (!pairedWith && choices.length === 0) return null;
  return (
    <Section title="Bookmatch">
      {pairedWith ? (
        <p>
          {isWhole ? 'Paired with ' : 'Its other half was '}
          <Link href={`/pieces/${pairedWith.label}`}>{other}</Link>
          {isWhole ? '. Used apart, the figure no longer mirrors.' : ', which is no longer in the shop.'}
        </p>
      ) : (
        <p className={styles.soft}>Sawn one after the other, two sisters open like a book.</p>
      )}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        {pairedWith ? (
          <Key
            variant="ghost"
            pending={part.pending}
            pendingWords="Writing"
            onClick={async () => {
              const answer = await part.run({ label });
              if (answer.ok) say({ words: 'The pair is parted.' });
            }}
          >
            Part the pair
          </Key>
        ) : null}
        {isWhole
          ? null
          : choices.map((choice) => (
              <Key
                key={choice.label}
                variant="ghost"
                pending={pair.pending}
                pendingWords="Writing"
                onClick={async () => {
                  const answer = await pair.run({ label, withLabel: choice.label });
                  if (answer.ok) say({ words: `Paired with ${printOwnLabel(choice.label)}.` });
                }}
              >
                Pair with {choice.words}
              </Key>
            ))}
      </div>
    </Section>
  );
}
