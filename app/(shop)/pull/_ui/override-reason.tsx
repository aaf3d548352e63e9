'use client';

import { useState } from 'react';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { StepHead } from '@/app/(shop)/pull/_ui/step-head';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';

/** The second step of using it anyway: why. */
export function OverrideReason({ bench, answer }: { bench: Bench; answer: Extract<PullReply, { kind: 'container' }> }) {
  const { draft, patch } = bench;
  const [empty, setEmpty] = useState(false);
  return (
    <form
      className={styles.stage}
      onSubmit={(submit) => {
        submit.preventDefault();
        const missing = draft.reasonText.trim() === '';
        setEmpty(missing);
        if (missing) giveFeedback('error');
        else patch({ step: 'amount' });
      }}
    >
      <div className={styles.narrow}>
        <StepHead step={2} words="The reason" />
        <VerdictPanel
          word={answer.verdict.word}
          size="small"
          fresh={false}
          headline={headline(
            sayVerdict(answer.verdict, { today: answer.today, order: bench.dateOrder, prefer: bench.units }),
          )}
        />
        <TextField
          label={`Why is it used for ${sayGoal(bench.goal)}?`}
          hint="It stays in the history of this container and of the job, with your name, the verdict and the test pour."
          lines={4}
          value={draft.reasonText}
          onChange={(reasonText) => patch({ reasonText })}
          maxLength={1000}
          error={empty && draft.reasonText.trim() === '' ? 'Write why, in a few words.' : undefined}
          autoFocus
        />
      </div>
      <KeyBar>
        <Key type="submit">Go on to the amount</Key>
        <Key variant="ghost" onClick={() => patch({ step: 'pour' })}>
          Back
        </Key>
      </KeyBar>
    </form>
  );
}
