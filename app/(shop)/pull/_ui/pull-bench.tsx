'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { heldPress, holdPress } from '@/app/_ui/act/held-press';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { scanPath, useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { showCode } from '@/app/_ui/scanner/show-code';
import { AmountStep } from '@/app/(shop)/pull/_ui/amount-step';
import { askPull, askWritten } from '@/app/(shop)/pull/_ui/ask-pull';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ChangeDay } from '@/app/(shop)/pull/_ui/change-day';
import { ChooseContainer } from '@/app/(shop)/pull/_ui/choose-container';
import { ContainerAnswer } from '@/app/(shop)/pull/_ui/container-answer';
import { ForWhat, sayDay } from '@/app/(shop)/pull/_ui/for-what';
import { MixedWith } from '@/app/(shop)/pull/_ui/mixed-with';
import { OverridePour } from '@/app/(shop)/pull/_ui/override-pour';
import { OverrideReason } from '@/app/(shop)/pull/_ui/override-reason';
import { PieceAnswer } from '@/app/(shop)/pull/_ui/piece-answer';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { type Done, PullDone } from '@/app/(shop)/pull/_ui/pull-done';
import { EMPTY_DRAFT, type PullDraft, questionOf, recallDraft, rememberDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import { goalOfJob, type PullGoal, recallGoal, rememberGoal, sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { PULL_PRESS } from '@/app/(shop)/pull/_ui/pull-press';
import type { PullStart } from '@/app/(shop)/pull/_ui/pull-start';
import { sayGiven, sayPulled } from '@/app/(shop)/pull/_ui/say-done';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { Problem } from '@/shared/result/answer';
import type { UnitSystem } from '@/shared/units/unit-system';

export type PullBenchProps = {
  jobs: readonly JobLine[];
  today: CalendarDate;
  units: UnitSystem;
  dateOrder: DateOrder;
  start: PullStart;
};

const UNREACHED: Problem = {
  code: 'unreached',
  what: 'The book could not be reached, so this is not looked up.',
  kept: 'What you scanned is kept here. Nothing is in the book yet.',
  todo: 'Come back into Wi-Fi: it asks again by itself, or press the key.',
};

/** The bench: for what, then the scan, then the answer, then the amount. What is not finished is kept on the device. */
export function PullBench({ jobs, today, units, dateOrder, start }: PullBenchProps) {
  const [ready, setReady] = useState(false);
  const [goal, setGoal] = useState<PullGoal>();
  const [draft, setDraft] = useState<PullDraft>(EMPTY_DRAFT);
  const [view, setView] = useState<'bench' | 'goal' | 'day'>('bench');
  const [asking, setAsking] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const [fresh, setFresh] = useState(false);
  const [done, setDone] = useState<Done>();
  const [notice, setNotice] = useState<string>();
  const turn = useRef(0);

  // What is typed while an answer is on its way stays: the answer is put into the latest draft, not into the one it was asked with.
  const latest = useRef<PullDraft>(EMPTY_DRAFT);
  const keep = useCallback((next: PullDraft) => {
    latest.current = next;
    setDraft(next);
    rememberDraft(next);
  }, []);

  /** Asks the book; a later question makes an earlier answer come to nothing. */
  const question = useCallback(
    async (asked: PullDraft, aim: PullGoal, { aloud }: { aloud: boolean }) => {
      const mine = ++turn.current;
      const replyTo = questionOf(asked, aim);
      const next = asked.replyTo === replyTo ? asked : { ...asked, reply: undefined, repliedAt: undefined, replyTo };
      setDone(undefined);
      setView('bench');
      setProblem(undefined);
      setAsking(true);
      keep(next);
      const answered = await askPull(next, aim);
      if (mine !== turn.current) return;
      setAsking(false);
      if (answered === 'unreached' || !answered.ok) {
        giveFeedback('error');
        setFresh(false);
        setProblem(answered === 'unreached' ? UNREACHED : answered.problem);
        return;
      }
      const { reply } = answered;
      setFresh(aloud);
      keep({ ...latest.current, reply, repliedAt: Date.now() });
      if (!aloud) return;
      if (reply.kind === 'container' || reply.kind === 'piece') giveFeedback(reply.verdict.word);
      else if (reply.kind === 'nothing') giveFeedback('error');
    },
    [keep],
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page opens; what the device kept is then in this component's hands
  useEffect(() => {
    const toldBefore = recallGoal();
    const told = goalNow(start, jobs, toldBefore);
    const sameGoal = start.jobId === undefined || start.jobId === toldBefore?.jobId;
    const kept = sameGoal ? recallDraft() : EMPTY_DRAFT;
    const aim = told.goal;
    setNotice(told.notice);
    setGoal(aim);
    if (aim) rememberGoal(aim);
    setReady(true);
    // The question is taken over from the address, so that going on does not ask it again.
    if (start.label || start.jobId || start.day) window.history.replaceState(null, '', '/pull');
    const asks = start.label ? { ...EMPTY_DRAFT, code: { text: start.label } } : kept;
    const next: PullDraft = start.day ? { ...asks, day: start.day } : asks;
    keep(next);
    if (!aim || !next.code) return;
    void resume(next, aim);

    async function resume(from: PullDraft, to: PullGoal) {
      const held = from.pressed === undefined ? undefined : heldPress(PULL_PRESS);
      const written = held ? await askWritten(held.key) : null;
      if (written && written !== 'unreached' && from.reply?.kind === 'container' && from.pressed !== undefined) {
        if (written.label === from.reply.line.label) {
          holdPress(PULL_PRESS, undefined);
          keep(EMPTY_DRAFT);
          setDone(sayPulled(written, from.pressed, from.reply, to, units));
          return;
        }
      }
      await question(from, to, { aloud: start.label !== undefined });
    }
  }, []);

  const scan = useCallback(
    (read: Scan) => {
      if (!goal) return;
      // A day chosen before the scan is meant for it; one of the thing before is not.
      const day = latest.current.code ? undefined : latest.current.day;
      const code = { text: read.text, symbology: read.symbology };
      void question({ ...EMPTY_DRAFT, code, day }, goal, { aloud: true });
    },
    [goal, question],
  );
  useScanHandler(scan, { enabled: ready && goal !== undefined });

  const unreached = problem?.code === 'unreached';
  useEffect(() => {
    if (!unreached || !goal) return;
    const again = () => void question(draft, goal, { aloud: true });
    window.addEventListener('online', again);
    return () => window.removeEventListener('online', again);
  }, [unreached, goal, draft, question]);

  const stage = useRef<HTMLDivElement>(null);
  const stageName = `${ready} ${view} ${done?.entryId ?? ''} ${draft.code?.text ?? ''} ${draft.step} ${asking && !draft.reply}`;
  const opened = useRef(false);
  useEffect(() => {
    if (!stageName.startsWith('true')) return;
    if (opened.current) {
      window.scrollTo(0, 0);
      if (!stage.current?.contains(document.activeElement)) stage.current?.focus({ preventScroll: true });
    }
    opened.current = true;
  }, [stageName]);

  const day = draft.day ?? goal?.day ?? today;
  const scanNext = () => {
    turn.current += 1;
    setAsking(false);
    setProblem(undefined);
    setDone(undefined);
    setView('bench');
    keep(EMPTY_DRAFT);
  };
  const bench: Bench | undefined = goal && {
    goal,
    day,
    today,
    units,
    dateOrder,
    draft,
    patch: (change) => keep({ ...latest.current, ...change }),
    ask: (change) => void question({ ...latest.current, ...change }, goal, { aloud: false }),
    turnTo: (label, amountText) => {
      const next = { ...EMPTY_DRAFT, code: { text: label }, day: draft.day, pairedLabel: draft.pairedLabel };
      void question({ ...next, amountText: amountText ?? draft.amountText }, goal, { aloud: true });
    },
    scanNext,
    changeDay: () => setView('day'),
    changeGoal: () => setView('goal'),
  };

  const chooseGoal = (aim: PullGoal) => {
    setGoal(aim);
    rememberGoal(aim);
    setNotice(undefined);
    setView('bench');
    if (draft.code) void question({ ...draft, day: undefined, asked: undefined, step: 'answer' }, aim, { aloud: true });
  };

  const context = goal ? (
    <button type="button" className={styles.goal} onClick={() => setView(view === 'goal' ? 'bench' : 'goal')}>
      <span className="unseen">For </span>
      {sayGoal(goal)} · {sayDay(day, today)}
      <span className="unseen">. Change</span>
    </button>
  ) : undefined;

  return (
    <Page title="Pull" context={context}>
      <div ref={stage} tabIndex={-1} className={styles.bench} data-ready={ready || undefined}>
        {!ready ? (
          <p className={styles.soft}>Opening the bench…</p>
        ) : !goal || !bench || view === 'goal' ? (
          <ForWhat
            jobs={jobs}
            goal={goal}
            notice={notice}
            today={today}
            dateOrder={dateOrder}
            onChoose={chooseGoal}
            onKeep={goal ? () => setView('bench') : undefined}
          />
        ) : view === 'day' ? (
          <ChangeDay
            goal={goal}
            day={day}
            today={today}
            dateOrder={dateOrder}
            onKeep={() => setView('bench')}
            onDay={(to) => {
              const next = { ...draft, day: to === goal.day ? undefined : to };
              setView('bench');
              if (draft.code) void question({ ...next, step: 'answer' }, goal, { aloud: true });
              else keep(next);
            }}
          />
        ) : done ? (
          <PullDone done={done} onNext={bench.turnTo} onScan={scanNext} />
        ) : (
          <BenchStage
            bench={bench}
            asking={asking}
            problem={problem}
            fresh={fresh}
            onScan={scan}
            onAgain={() => void question(draft, goal, { aloud: true })}
            onDone={(what) => {
              giveFeedback('read');
              keep(EMPTY_DRAFT);
              setDone(what);
            }}
            onChanged={(changed) => {
              void question({ ...draft, step: 'answer', pressed: undefined }, goal, { aloud: true }).then(() =>
                setProblem(changed),
              );
            }}
          />
        )}
      </div>
    </Page>
  );
}

type BenchStageProps = {
  bench: Bench;
  asking: boolean;
  problem?: Problem;
  fresh: boolean;
  onScan: (scan: Scan) => void;
  onAgain: () => void;
  onDone: (done: Done) => void;
  onChanged: (problem: Problem) => void;
};

function BenchStage({ bench, asking, problem, fresh, onScan, onAgain, onDone, onChanged }: BenchStageProps) {
  const { draft, goal, today, units } = bench;
  const { code, reply, step } = draft;
  if (!code) {
    return (
      <div className={styles.stage}>
        <div className={styles.narrow}>
          <Scanner prompt="Scan the tin you want to use." onScan={onScan} />
          <div className={styles.quietRow}>
            <p>
              For {sayGoal(goal)}, used {bench.day === today ? 'today' : `on ${sayDay(bench.day, today)}`}.
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
          Not fresh: this is what the book said {sayMoment(draft.repliedAt)}. It may have changed since.
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
        <ChooseContainer bench={bench} reply={reply} />
      </>
    );
  }
  if (reply.kind === 'piece') {
    return (
      <>
        {above}
        <PieceAnswer
          bench={bench}
          reply={reply}
          fresh={fresh}
          stale={stale}
          onAskAgain={onAgain}
          onGiven={(given, act) => onDone(sayGiven(given, act, reply))}
        />
      </>
    );
  }
  if (step === 'answer' || stale) {
    return (
      <>
        {above}
        <ContainerAnswer
          key={`${reply.line.label} ${draft.repliedAt}`}
          bench={bench}
          answer={reply}
          fresh={fresh}
          stale={stale}
          onAskAgain={onAgain}
        />
      </>
    );
  }
  return (
    <>
      {above}
      {step === 'mixed' ? <MixedWith bench={bench} answer={reply} /> : null}
      {step === 'pour' ? <OverridePour bench={bench} answer={reply} /> : null}
      {step === 'reason' ? <OverrideReason bench={bench} answer={reply} /> : null}
      {step === 'amount' ? (
        <AmountStep
          bench={bench}
          answer={reply}
          onChanged={onChanged}
          onPulled={(pulled, asked) => onDone(sayPulled(pulled, asked, reply, goal, units))}
        />
      ) : null}
    </>
  );
}

function goalNow(
  start: PullStart,
  jobs: readonly JobLine[],
  kept: PullGoal | undefined,
): { goal?: PullGoal; notice?: string } {
  const wanted = start.jobId ?? kept?.jobId;
  if (wanted === undefined) return { goal: kept };
  const job = jobs.find((one) => one.id === wanted);
  if (job) return { goal: goalOfJob(job) };
  const name = kept?.jobId === wanted ? kept.name : 'That job';
  return { notice: `${name} is not open any more. Choose what this is for.` };
}

function sayMoment(milliseconds: number): string {
  const at = new Date(milliseconds);
  const time = at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return `at ${time} on ${at.toLocaleDateString('en-GB', { day: 'numeric', month: 'short' })}`;
}
