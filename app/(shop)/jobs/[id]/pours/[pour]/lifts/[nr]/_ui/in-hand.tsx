'use client';

import { useState } from 'react';
import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { useAct } from '@/app/_ui/act/use-act';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import type { OpenSlot } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import type { LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { weighAction } from '@/app/(shop)/jobs/[id]/pours/actions';
import { sayGrams } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ContainerFacts } from '@/app/(shop)/pull/_ui/container-facts';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import { Safety } from '@/app/(shop)/pull/_ui/safety';
import { sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { sayHeldBecause, sayNever } from '@/app/(shop)/pull/_ui/say-hold';
import { readWeighing, WeighingFields } from '@/app/(shop)/pull/_ui/weighing-fields';
import { err, ok, type Result } from '@/shared/result/result';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import { decimalText } from '@/shared/units/decimal-text';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';

type Answer = Extract<PullReply, { kind: 'container' }>;

export type InHandProps = {
  card: LiftCard;
  slot: OpenSlot;
  bench: Bench;
  answer: Answer;
  /** What was said on the card of the lift below. */
  said: SaidOfBelow;
  onWeighed: () => void;
  onStop: () => void;
};

const WORD = { stop: 'stop', care: 'care', note: 'use' } as const;

/** A container that was scanned for a part: its verdict for the last lift, then how much of it is in the bucket. */
export function InHand({ card, slot, bench, answer, said, onWeighed, onStop }: InHandProps) {
  const { draft, patch, units, dateOrder: order } = bench;
  const { verdict, line, today, testPour } = answer;
  const { run, pending, problem } = useAct(weighAction, { keepAs: `weigh-${card.liftId}` });
  const [fault, setFault] = useState<string>();
  const part = card.batches[slot.batch - 1]?.parts[slot.part === 'A' ? 0 : 1];
  const ratio = card.batches[slot.batch - 1]?.ratio;
  const missing =
    slot.more && ratio?.add?.part === slot.part ? ratio.add.amount : (part?.target ?? 0) - (part?.sum ?? 0);
  const mayOverride = verdict.override !== 'not-needed' && verdict.override.allowed;
  const never =
    verdict.override !== 'not-needed' && !verdict.override.allowed ? sayNever(verdict.override.because) : undefined;
  const isStopped = verdict.word === 'stop' && !draft.overriding;
  const context = { today, order, prefer: units, sayAmount: (amount: number) => sayLeft(amount, line.unit, units) };
  const grams = draft.amountText === '' && missing > 0 ? decimalText(BigInt(missing), 3) : draft.amountText;
  const read = draft.weighing ? massByWeight(draft, answer, units) : massTyped(grams, units);
  const mass = read.ok && read.value.mass > 0 ? read.value.mass : undefined;

  async function weigh() {
    if (mass === undefined) {
      setFault(read.ok ? 'Type an amount above zero.' : read.error);
      return giveFeedback('error');
    }
    const answered = await run({
      pourId: card.pourId,
      nr: card.nr,
      ...slot,
      label: line.label,
      mass,
      weighed: read.ok ? read.value.weighed : undefined,
      seen: verdict.word,
      override: draft.overriding ? { reason: draft.reasonText.trim(), inspectionId: testPour?.id ?? 0 } : undefined,
      below: said,
    });
    if (!answered.ok) {
      giveFeedback('error');
      if (answered.problem.code === 'verdict-changed') bench.ask({});
      return;
    }
    giveFeedback('use');
    onWeighed();
  }

  const reasons = verdict.reasons.map((reason) => ({
    id: JSON.stringify(reason),
    word: WORD[reason.weight],
    sentence: `${sayReason(reason, context)}${sayHeldBecause(reason, answer)}`,
    toDo: whatToDo(reason, { materialKind: line.kind, prefer: units }),
  }));
  return (
    <form
      className={styles.stage}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        if (!isStopped) void weigh();
      }}
    >
      <div className={styles.narrow}>
        <VerdictPanel
          word={verdict.word}
          size={isStopped ? 'full' : 'small'}
          headline={headline(sayVerdict(verdict, context))}
        />
        <ContainerFacts line={line} units={units} />
        {isStopped ? null : (
          <Section title={`Part ${slot.part}${card.batches.length > 1 ? `, batch ${slot.batch}` : ''}`}>
            <p className={styles.weighThis}>{missing > 0 ? sayGrams(missing) : 'nothing more is asked for'}</p>
            {draft.weighing ? (
              <WeighingFields
                draft={draft}
                answer={answer}
                units={units}
                onEdit={(change) => {
                  setFault(undefined);
                  patch(change);
                }}
                fault={fault ?? problem?.fields?.mass}
              />
            ) : (
              <QuantityField
                label="In the bucket"
                hint="What the scale says really went in. A number alone is grams."
                value={grams}
                onChange={(amountText) => {
                  setFault(undefined);
                  patch({ amountText: amountText === '' ? ' ' : amountText });
                }}
                read={(text) => {
                  const typed = massTyped(text, units);
                  return typed.ok
                    ? { ok: true, says: `Reads as ${sayGrams(typed.value.mass)}.` }
                    : { ok: false, says: typed.error };
                }}
                error={fault ?? problem?.fields?.mass}
                enterKeyHint="done"
              />
            )}
            <div className={styles.row}>
              <Key variant="ghost" onClick={() => patch({ weighing: !draft.weighing })}>
                {draft.weighing ? 'Type the grams' : 'By weighing the container'}
              </Key>
            </div>
          </Section>
        )}
        {reasons.length > 0 ? (
          <Section>
            <ReasonList reasons={reasons} />
            {never ? <p>{never.words}</p> : null}
          </Section>
        ) : null}
        <Safety kind={line.kind} hazards={answer.hazards} safetySheet={answer.safetySheet} />
        <ProblemNote problem={problem} />
      </div>
      <KeyBar>
        {isStopped ? (
          <Key onClick={() => bench.scanNext()}>Scan another</Key>
        ) : (
          <Key
            type="submit"
            variant={draft.overriding ? 'stop' : 'main'}
            pending={pending}
            pendingWords="Writing into the book"
          >
            {draft.overriding ? 'Use it anyway: ' : ''}
            {mass === undefined ? 'It is in the bucket' : `${sayGrams(mass)} of part ${slot.part} are in`}
          </Key>
        )}
        {isStopped && mayOverride ? (
          <Key variant="stop" onClick={() => patch({ step: 'pour', overriding: true })}>
            Use anyway
          </Key>
        ) : null}
        {isStopped ? null : (
          <Key variant="ghost" onClick={() => bench.scanNext()}>
            Scan another
          </Key>
        )}
        <Key variant="ghost" onClick={onStop}>
          Back to the card
        </Key>
      </KeyBar>
    </form>
  );
}

type Read = Result<{ mass: number; weighed?: { beforeMg?: number; afterMg: number } }, string>;

function massTyped(text: string, prefer: Bench['units']): Read {
  const read = parseQuantity(text.trim(), { unit: 'mg', prefer, bareUnit: 'g' });
  return read.ok ? ok({ mass: read.value }) : err(sayQuantityError(read.error));
}

/** Grams by the weights of the container; of a material kept by volume the grams that volume weighs. */
function massByWeight(draft: Bench['draft'], answer: Answer, units: Bench['units']): Read {
  const read = readWeighing(draft, answer, units);
  if (!read.ok) return read;
  const { used, weighed } = read.value;
  if (answer.line.unit === 'mg') return ok({ mass: used, weighed });
  const byScale = weighed.beforeMg === undefined ? undefined : weighed.beforeMg - weighed.afterMg;
  return ok({ mass: byScale ?? Math.round((used * (answer.densityGramsPerLitre ?? 0)) / 1000), weighed });
}
