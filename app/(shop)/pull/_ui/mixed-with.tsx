'use client';

import { useState } from 'react';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { askPull } from '@/app/(shop)/pull/_ui/ask-pull';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ContainerFacts } from '@/app/(shop)/pull/_ui/container-facts';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { EMPTY_DRAFT } from '@/app/(shop)/pull/_ui/pull-draft';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Trouble = { happened: string; toDo: string };

/** The other part it is to be mixed with, by scanning it: A and B must be of one system. */
export function MixedWith({ bench, answer }: { bench: Bench; answer: Extract<PullReply, { kind: 'container' }> }) {
  const [trouble, setTrouble] = useState<Trouble>();
  const [looking, setLooking] = useState(false);
  const { line } = answer;

  async function take(scan: Scan) {
    setLooking(true);
    const code = { text: scan.text, symbology: scan.symbology };
    const answered = await askPull({ ...EMPTY_DRAFT, code, day: bench.day }, bench.goal);
    setLooking(false);
    const found = troubleOf(answered, line.label);
    if (typeof found === 'string') return bench.ask({ pairedLabel: found, step: 'answer' });
    giveFeedback('error');
    setTrouble(found);
  }

  return (
    <div className={styles.stage}>
      <div className={styles.narrow}>
        <ContainerFacts line={line} units={bench.units} />
        <Scanner compact prompt="Scan the other part it is mixed with." onScan={(scan) => void take(scan)} />
        <p role="status">{looking ? 'Looking it up…' : ''}</p>
        {trouble ? (
          <PlainError happened={trouble.happened} kept="This pull is kept as it is." toDo={trouble.toDo} />
        ) : null}
      </div>
      <KeyBar>
        {bench.draft.pairedLabel ? (
          <Key variant="ghost" onClick={() => bench.ask({ pairedLabel: undefined, step: 'answer' })}>
            No other part
          </Key>
        ) : null}
        <Key variant="ghost" onClick={() => bench.patch({ step: 'answer' })}>
          Back to the answer
        </Key>
      </KeyBar>
    </div>
  );
}

/** The label of the other part, or why what was scanned is none. */
function troubleOf(answered: Awaited<ReturnType<typeof askPull>>, own: string): string | Trouble {
  if (answered === 'unreached') {
    return { happened: 'The book could not be reached.', toDo: 'Come back into Wi-Fi and scan it again.' };
  }
  if (!answered.ok) return { happened: answered.problem.what, toDo: answered.problem.todo };
  const { reply } = answered;
  if (reply.kind === 'nothing') return { happened: reply.what, toDo: reply.todo };
  if (reply.kind === 'choose') {
    return {
      happened: `That bar code is ${reply.product}, not one container of it.`,
      toDo: 'Scan the own label of the container.',
    };
  }
  if (reply.kind === 'piece')
    return { happened: 'That is a piece of wood.', toDo: 'Scan the other part of the resin.' };
  const { label, candidate } = reply.line;
  if (label === own) return { happened: 'That is the same container.', toDo: 'Scan the other part.' };
  if (candidate.policy.system) return label;
  return {
    happened: `${printOwnLabel(label)}, ${reply.line.product}, is part of no two-part system in the book.`,
    toDo: 'Scan the other part, or write its system on the product’s page.',
  };
}
