'use client';

import { useState } from 'react';
import type { Pulled } from '@/app/_server/pull/pull-container';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { mayBeWritten } from '@/app/_ui/act/problem-of-press';
import { useAct } from '@/app/_ui/act/use-act';
import { DateTextField } from '@/app/_ui/field/date-text-field';
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
import { bareWords, echoAmount, readAmount } from '@/app/(shop)/pull/_ui/read-amount';
import { sayAmount, sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { StepHead } from '@/app/(shop)/pull/_ui/step-head';
import { TakeInstead } from '@/app/(shop)/pull/_ui/take-instead';
import { readWeighing, WeighingFields } from '@/app/(shop)/pull/_ui/weighing-fields';
import { pullAction } from '@/app/(shop)/pull/actions';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import type { Problem } from '@/shared/result/answer';
import { err, ok, type Result } from '@/shared/result/result';
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
  const byScale = byWeight ? readWeighing(draft, answer, units) : undefined;
  const read = byScale
    ? byScale.ok
      ? ok(byScale.value.used)
      : byScale
    : readAmount(draft.amountText, line.unit, units);
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

  const taken = readTaken(draft.takenText, answer, bench.dateOrder);

  async function take() {
    if (wanted === undefined || asked === undefined) {
      setFault(read.ok ? 'Type an amount above zero.' : read.error);
      giveFeedback('error');
      return;
    }
    if (taken && !taken.ok) return giveFeedback('error');
    if (short && !seesRest) return ask({ asked: wanted });
    patch({ pressed: asked });
    const answered = await run({
      label: line.label,
      jobId: goal.jobId,
      purpose: goal.purpose,
      dayOfUse: bench.day,
      asked,
      weighed: byScale?.ok ? byScale.value.weighed : undefined,
      happenedOn: taken?.value,
      seen: verdict.word,
      pairedLabel: draft.pairedLabel,
      override: overriding ? { reason: draft.reasonText.trim(), inspectionId: testPour?.id ?? 0 } : undefined,
    });
    if (answered.ok) return onPulled(answered.answer, asked);
    giveFeedback('error');
    if (!mayBeWritten(answered.problem)) patch({ pressed: undefined });
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
            sayVerdict(verdict, {
              today: answer.today,
              order: bench.dateOrder,
              prefer: units,
              sayAmount: (n) => sayLeft(n, line.unit, units),
            }),
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
        {draft.takenText === undefined ? (
          <div className={styles.quietRow}>
            <button
              type="button"
              className={styles.quiet}
              onClick={() => patch({ takenText: sayDate(addDays(answer.today, -1), { order: bench.dateOrder }) })}
            >
              It was taken on another day
            </button>
          </div>
        ) : (
          <Section>
            <DateTextField
              label="Taken on"
              hint="The day it left the container. It is written today all the same."
              today={answer.today}
              order={bench.dateOrder}
              aim="past"
              value={draft.takenText}
              onChange={(takenText) => patch({ takenText })}
              error={taken && !taken.ok ? taken.error : problem?.fields?.happenedOn}
              autoFocus
            />
            <div className={styles.quietRow}>
              <button type="button" className={styles.quiet} onClick={() => patch({ takenText: undefined })}>
                It was taken today
              </button>
            </div>
          </Section>
        )}
        {rest ? (
          <Section title={`To reach ${say(wanted ?? 0)}`}>
            <TakeInstead
              suggestion={rest}
              today={answer.today}
              order={bench.dateOrder}
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

/** The day that is typed, or what is wrong with it; undefined while it was taken today. */
function readTaken(
  text: string | undefined,
  { today, line }: AmountStepProps['answer'],
  order: Bench['dateOrder'],
): Result<CalendarDate, string> | undefined {
  if (text === undefined) return undefined;
  const read = readTypedDate(text, { today, order, aim: 'past' });
  if (!read.ok || read.value.ambiguous || read.value.precision !== 'day') return err('Give one whole day.');
  const { date } = read.value;
  if (date > today) return err('That day is still to come.');
  return date < line.receivedOn
    ? err(`It came in on ${sayDate(line.receivedOn, { order, today })}: nothing was taken from it before.`)
    : ok(date);
}

/** Refusals that mean the book is no longer what the screen shows. */
const CHANGED = new Set(['verdict-changed', 'already-empty', 'not-enough-left', 'weighing-differs', 'day-in-the-past']);
