'use client';

import { useState } from 'react';
import type { Pulled } from '@/app/_server/pull/pull-container';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { useAct } from '@/app/_ui/act/use-act';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ContainerFacts } from '@/app/(shop)/pull/_ui/container-facts';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { PULL_PRESS } from '@/app/(shop)/pull/_ui/pull-press';
import { bareWords, echoAmount, readAmount, sayAmount, sayLeft } from '@/app/(shop)/pull/_ui/read-amount';
import { StepHead } from '@/app/(shop)/pull/_ui/step-head';
import { TakeInstead } from '@/app/(shop)/pull/_ui/take-instead';
import { readWeighing, WeighingFields } from '@/app/(shop)/pull/_ui/weighing-fields';
import { pullAction } from '@/app/(shop)/pull/actions';
import type { Problem } from '@/shared/result/answer';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';

export type AmountStepProps = {
  bench: Bench;
  answer: Extract<PullReply, { kind: 'container' }>;
  onPulled: (pulled: Pulled, asked: number) => void;
  /** The book changed while it was looked at: ask it again and show what it says now. */
  onChanged: (problem: Problem) => void;
};

/** How much: typed, all of it, or found by weighing; then the key that writes it. */
export function AmountStep({ bench, answer, onPulled, onChanged }: AmountStepProps) {
  const { draft, patch, ask, units, goal } = bench;
  const { line, verdict, testPour } = answer;
  const { run, pending, problem } = useAct(pullAction, { keepAs: PULL_PRESS });
  const [fault, setFault] = useState<string>();
  const overriding = draft.overriding && verdict.override !== 'not-needed' && verdict.override.allowed;
  const say = (amount: number) => sayAmount(amount, line.unit, units);
  const byWeight = draft.weighing && line.unit !== 'piece';
  const read = byWeight ? readWeighing(draft, answer, units) : readAmount(draft.amountText, line.unit, units);
  const wanted = read.ok && read.value > 0 ? read.value : undefined;
  const short = wanted !== undefined && wanted > line.left;
  const seesRest = short && draft.asked === wanted;
  const asked = short && seesRest ? line.left : wanted;
  const rest = seesRest ? verdict.instead : undefined;

  /** A changed amount makes the answer that was given for another amount an old one. */
  const edit = (change: Parameters<typeof patch>[0]) => {
    setFault(undefined);
    if (draft.asked === undefined) patch(change);
    else ask({ ...change, asked: undefined });
  };

  async function take() {
    if (wanted === undefined || asked === undefined) {
      setFault(read.ok ? 'Type an amount above zero.' : read.error);
      giveFeedback('error');
      return;
    }
    if (short && !seesRest) return ask({ asked: wanted });
    patch({ pressed: asked });
    const answered = await run({
      label: line.label,
      jobId: goal.jobId,
      purpose: goal.purpose,
      dayOfUse: bench.day,
      asked,
      seen: verdict.word,
      pairedLabel: draft.pairedLabel,
      override: overriding ? { reason: draft.reasonText.trim(), inspectionId: testPour?.id ?? 0 } : undefined,
    });
    if (answered.ok) return onPulled(answered.answer, asked);
    giveFeedback('error');
    if (answered.problem.code !== 'no-network') patch({ pressed: undefined });
    if (CHANGED.has(answered.problem.code)) onChanged(answered.problem);
  }

  const words = asked === undefined ? undefined : `${say(asked)} ${short ? 'of this ' : ''}for ${sayGoal(goal)}`;
  return (
    <form
      className={styles.stage}
      onSubmit={(submit) => {
        submit.preventDefault();
        void take();
      }}
    >
      <div className={styles.narrow}>
        {overriding ? <StepHead step={3} words="The amount" /> : null}
        <VerdictPanel
          word={verdict.word}
          size="small"
          fresh={false}
          headline={headline(
            sayVerdict(verdict, { today: answer.today, sayAmount: (n) => sayLeft(n, line.unit, units) }),
          )}
        />
        <ContainerFacts line={line} units={units} />
        <Section title={byWeight ? 'How much was used?' : 'How much?'}>
          {byWeight ? (
            <WeighingFields draft={draft} answer={answer} units={units} onEdit={edit} fault={fault} />
          ) : (
            <QuantityField
              label={`Amount out of ${sayLeft(line.left, line.unit, units)}`}
              hint={`A number alone is ${bareWords(line.unit, units)}.`}
              value={draft.amountText}
              onChange={(amountText) => edit({ amountText })}
              read={(text) => echoAmount(text, line.unit, units)}
              error={fault ?? problem?.fields?.asked}
              enterKeyHint="done"
              autoFocus
            />
          )}
          <div className={styles.threeKeys}>
            {byWeight ? null : (
              <Key variant="ghost" onClick={() => edit({ amountText: printQuantityExact(line.left, line.unit) })}>
                All of it
              </Key>
            )}
            {line.unit === 'piece' ? null : (
              <Key variant="ghost" onClick={() => edit({ weighing: !draft.weighing })}>
                {byWeight ? 'Type the amount' : 'By weighing'}
              </Key>
            )}
          </div>
          {short ? (
            <p className={styles.short} role="status">
              That is {say(wanted - line.left)} more than is left in it.
            </p>
          ) : null}
        </Section>
        {rest ? (
          <Section title={`To reach ${say(wanted ?? 0)}`}>
            <TakeInstead
              suggestion={rest}
              today={answer.today}
              sayAmount={say}
              onTake={(one) => bench.turnTo(one.label, printQuantityExact(one.take as typeof line.left, line.unit))}
            />
          </Section>
        ) : seesRest ? (
          <Section>
            <p>Nothing else on hand is good for that day.</p>
          </Section>
        ) : null}
        <ProblemNote problem={problem} />
      </div>
      <KeyBar>
        {overriding && !(short && !seesRest) ? (
          <div className={styles.whole}>
            <Key type="submit" variant="stop" pending={pending} pendingWords="Writing into the book">
              Use it anyway: {words ?? 'type how much'}
            </Key>
          </div>
        ) : (
          <Key type="submit" pending={pending} pendingWords="Writing into the book">
            {short && !seesRest
              ? `See what else there is for ${say(wanted)}`
              : words
                ? `Take ${words}`
                : 'Take it: type how much'}
          </Key>
        )}
        <Key variant="ghost" onClick={() => patch({ step: overriding ? 'reason' : 'answer' })}>
          Back
        </Key>
      </KeyBar>
    </form>
  );
}

/** Refusals that mean the book is no longer what the screen shows. */
const CHANGED = new Set(['verdict-changed', 'already-empty', 'not-enough-left']);
