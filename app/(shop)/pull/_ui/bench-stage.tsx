'use client';

import { useEffect } from 'react';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { later } from '@/app/_ui/later/later';
import { LaterPart } from '@/app/_ui/later/later-part';
import { PlainError } from '@/app/_ui/plain-error';
import type { Scan } from '@/app/_ui/scanner/scan';
import { scanPath } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { showCode } from '@/app/_ui/scanner/show-code';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { sayDay } from '@/app/(shop)/pull/_ui/for-what';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import type { Done } from '@/app/(shop)/pull/_ui/pull-done';
import { sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { sayGiven, sayPulled } from '@/app/(shop)/pull/_ui/say-done';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { Problem } from '@/shared/result/answer';

const KEPT = 'This pull is kept here. Nothing is in the book yet.';

const amountStep = later(async () => (await import('@/app/(shop)/pull/_ui/amount-step')).AmountStep);
const chooseContainer = later(async () => (await import('@/app/(shop)/pull/_ui/choose-container')).ChooseContainer);
const containerAnswer = later(async () => (await import('@/app/(shop)/pull/_ui/container-answer')).ContainerAnswer);
const mixedWith = later(async () => (await import('@/app/(shop)/pull/_ui/mixed-with')).MixedWith);
const overridePour = later(async () => (await import('@/app/(shop)/pull/_ui/override-pour')).OverridePour);
const overrideReason = later(async () => (await import('@/app/(shop)/pull/_ui/override-reason')).OverrideReason);
const pieceAnswer = later(async () => (await import('@/app/(shop)/pull/_ui/piece-answer')).PieceAnswer);
const LATER = [containerAnswer, amountStep, chooseContainer, mixedWith, overridePour, overrideReason, pieceAnswer];

/** Fetches what shows the answer, so that it is there before the scan. */
export const fetchAnswer = () => void containerAnswer.fetch().catch(() => undefined);

export type BenchStageProps = {
  bench: Bench;
  asking: boolean;
  problem?: Problem;
  fresh: boolean;
  onScan: (scan: Scan) => void;
  onAgain: () => void;
  onDone: (done: Done) => void;
  onChanged: (problem: Problem) => void;
};

/** The one thing that stands on the bench: the scanner, the answer, or a step on the way to taking it. */
export function BenchStage({ bench, asking, problem, fresh, onScan, onAgain, onDone, onChanged }: BenchStageProps) {
  const { draft, goal, today, units, dateOrder: order } = bench;
  const { code, reply, step } = draft;
  const scanned = code !== undefined;
  // With the question, so that a step is there when its key is pressed; one that does not come says so itself.
  useEffect(() => {
    if (scanned) for (const each of LATER) each.fetch().catch(() => undefined);
  }, [scanned]);
  if (!code) {
    return (
      <div className={styles.stage}>
        <div className={styles.narrow}>
          <Scanner prompt="Scan the tin you want to use." onScan={onScan} />
          <div className={styles.quietRow}>
            <p>
              For {sayGoal(goal)}, used {bench.day === today ? 'today' : `on ${sayDay(bench.day, { today, order })}`}.
            </p>
            <button type="button" className={styles.quiet} onClick={bench.changeDay}>
              Another day
            </button>
          </div>
        </div>
      </div>
    );
  }
  const stale = problem?.code === 'unreached';
  const trouble = problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null;
  if (!reply) {
    return (
      <div className={styles.stage}>
        <div className={styles.narrow}>
          {asking ? (
            <p role="status" className={styles.question}>
              Looking it up…
            </p>
          ) : null}
          <p className={styles.looking}>{showCode(code.text)}</p>
          {trouble}
        </div>
        <KeyBar>
          {asking ? null : <Key onClick={onAgain}>Ask again</Key>}
          <Key variant="ghost" onClick={bench.scanNext}>
            Scan another
          </Key>
        </KeyBar>
      </div>
    );
  }
  const above = (
    <>
      {trouble}
      {stale && draft.repliedAt ? (
        <p className={styles.stale} role="status">
          Not fresh: this is what the book said {sayMoment(draft.repliedAt, order)}. It may have changed since.
        </p>
      ) : null}
    </>
  );
  if (reply.kind === 'nothing') {
    return (
      <div className={styles.stage}>
        <div className={styles.narrow}>
          {above}
          <h2 className={styles.question}>{reply.what}</h2>
          <p>{reply.todo}</p>
          <p className={styles.looking}>{showCode(code.text)}</p>
        </div>
        <KeyBar>
          <Key onClick={bench.scanNext}>Scan another</Key>
          {reply.teach ? (
            <LinkKey variant="ghost" href={scanPath({ ...code, source: 'typed' })}>
              Say what this code is
            </LinkKey>
          ) : null}
        </KeyBar>
      </div>
    );
  }
  if (reply.kind === 'choose') {
    return (
      <>
        {above}
        <LaterPart kept={KEPT} key="choose" of={chooseContainer} given={{ bench, reply }} />
      </>
    );
  }
  if (reply.kind === 'piece') {
    return (
      <>
        {above}
        <LaterPart
          kept={KEPT}
          key="piece"
          of={pieceAnswer}
          given={{
            bench,
            reply,
            fresh,
            stale,
            onAskAgain: onAgain,
            onGiven: (given, act) => onDone(sayGiven(given, act, reply)),
          }}
        />
      </>
    );
  }
  if (step === 'answer' || stale) {
    return (
      <>
        {above}
        <LaterPart
          kept={KEPT}
          key={`${reply.line.label} ${draft.repliedAt}`}
          of={containerAnswer}
          given={{ bench, answer: reply, fresh, stale, onAskAgain: onAgain }}
        />
      </>
    );
  }
  return (
    <>
      {above}
      {step === 'mixed' ? <LaterPart kept={KEPT} of={mixedWith} given={{ bench, answer: reply }} /> : null}
      {step === 'pour' ? <LaterPart kept={KEPT} of={overridePour} given={{ bench, answer: reply }} /> : null}
      {step === 'reason' ? <LaterPart kept={KEPT} of={overrideReason} given={{ bench, answer: reply }} /> : null}
      {step === 'amount' ? (
        <LaterPart
          kept={KEPT}
          of={amountStep}
          given={{
            bench,
            answer: reply,
            onChanged,
            onPulled: (pulled, asked) => onDone(sayPulled(pulled, asked, reply, goal, { units, order })),
          }}
        />
      ) : null}
    </>
  );
}

function sayMoment(milliseconds: number, order: DateOrder): string {
  const at = new Date(milliseconds);
  const time = at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  const locale = order === 'month-first' ? 'en-US' : 'en-GB';
  return `at ${time} on ${at.toLocaleDateString(locale, { day: 'numeric', month: 'short' })}`;
}
