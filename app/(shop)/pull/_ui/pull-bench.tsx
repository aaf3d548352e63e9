'use client';

import Link from 'next/link';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { heldPress, holdPress } from '@/app/_ui/act/held-press';
import { Page } from '@/app/_ui/page';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { useFirstTouch } from '@/app/_ui/use-first-touch';
import { askWritten } from '@/app/(shop)/pull/_ui/ask-pull';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { BenchStage, fetchAnswer } from '@/app/(shop)/pull/_ui/bench-stage';
import { ChangeDay } from '@/app/(shop)/pull/_ui/change-day';
import { ForWhat, sayDay } from '@/app/(shop)/pull/_ui/for-what';
import { goalNow, liftDay } from '@/app/(shop)/pull/_ui/goal-now';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { type Done, PullDone } from '@/app/(shop)/pull/_ui/pull-done';
import { EMPTY_DRAFT, type PullDraft, recallDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import { type PullGoal, recallGoal, rememberGoal, sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { PULL_PRESS } from '@/app/(shop)/pull/_ui/pull-press';
import type { PullStart } from '@/app/(shop)/pull/_ui/pull-start';
import { sayPulled } from '@/app/(shop)/pull/_ui/say-done';
import { useQuestion } from '@/app/(shop)/pull/_ui/use-question';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { judgedDay } from '@/shared/shelf-life/judged-day';
import type { UnitSystem } from '@/shared/units/unit-system';

export type PullBenchProps = {
  jobs: readonly JobLine[];
  today: CalendarDate;
  units: UnitSystem;
  dateOrder: DateOrder;
  start: PullStart;
};

/** The bench: for what, then the scan, then the answer, then the amount. What is not finished is kept on the device. */
export function PullBench({ jobs, today, units, dateOrder, start }: PullBenchProps) {
  useFirstTouch(fetchAnswer);
  const [ready, setReady] = useState(false);
  const [goal, setGoal] = useState<PullGoal>();
  const [view, setView] = useState<'bench' | 'goal' | 'day'>('bench');
  const [done, setDone] = useState<Done>();
  const [notice, setNotice] = useState<string>();
  const { draft, latest, keep, drop, ask, asking, problem, setProblem, fresh } = useQuestion();
  /** The day and the other part of what was just pulled, for the next container of the same amount. */
  const before = useRef<Pick<PullDraft, 'day' | 'pairedLabel'>>({});

  const question = useCallback(
    (next: PullDraft, aim: PullGoal, how: { aloud: boolean }) => {
      setDone(undefined);
      setView('bench');
      return ask(next, aim, how);
    },
    [ask],
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page opens; what the device kept is then in this component's hands
  useEffect(() => {
    const toldBefore = recallGoal();
    const told = goalNow(start, jobs, toldBefore, { today, order: dateOrder });
    const sameGoal = start.jobId === undefined || start.jobId === toldBefore?.jobId;
    const recalled = sameGoal ? recallDraft() : EMPTY_DRAFT;
    const kept = recalled.day && recalled.day < today ? { ...recalled, day: undefined } : recalled;
    const aim = told.goal;
    setNotice(told.notice);
    setGoal(aim);
    if (aim) rememberGoal(aim);
    setReady(true);
    // The question is taken over from the address, so that going on does not ask it again.
    if (start.label || start.jobId || start.day) window.history.replaceState(null, '', '/pull');
    const asks = start.label ? { ...EMPTY_DRAFT, code: { text: start.label } } : kept;
    const next: PullDraft = start.day && start.day >= today ? { ...asks, day: start.day } : asks;
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
          setDone(sayPulled(written, from.pressed, from.reply, to, { units, order: dateOrder }));
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
    [goal, question, latest],
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

  // A page left open over midnight learns the new day from the book's answer.
  const reply = draft.reply;
  const now = reply && 'today' in reply && reply.today > today ? reply.today : today;
  const wantedDay = draft.day ?? goal?.day ?? now;
  const day = judgedDay({ dayOfUse: wantedDay, today: now });
  const scanNext = () => {
    setDone(undefined);
    setView('bench');
    drop();
  };
  const bench: Bench | undefined = goal && {
    goal,
    day,
    today: now,
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

  const chooseGoal = (chosen: PullGoal) => {
    const { goal: aim, notice: passed } = liftDay(chosen, { today: now, order: dateOrder });
    setGoal(aim);
    rememberGoal(aim);
    setNotice(passed);
    setView('bench');
    setDone(undefined);
    const other = { day: undefined, asked: undefined, pairedLabel: undefined, step: 'answer' as const };
    if (draft.code) void question({ ...draft, ...other }, aim, { aloud: true });
    else keep({ ...draft, ...other });
  };

  const context = goal ? (
    <button type="button" className={styles.goal} onClick={() => setView(view === 'goal' ? 'bench' : 'goal')}>
      <span className="unseen">For </span>
      {sayGoal(goal)} · {sayDay(day, { today, order: dateOrder })}
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
            today={now}
            dateOrder={dateOrder}
            onChoose={chooseGoal}
            onKeep={goal ? () => setView('bench') : undefined}
          />
        ) : view === 'day' ? (
          <ChangeDay
            goal={goal}
            day={day}
            today={now}
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
          <PullDone
            done={done}
            onScan={scanNext}
            onNext={(label, amountText) =>
              void question({ ...EMPTY_DRAFT, ...before.current, code: { text: label }, amountText }, goal, {
                aloud: true,
              })
            }
          />
        ) : (
          <>
            {notice && draft.step === 'answer' ? (
              <p role="status" className={styles.passed}>
                {notice}{' '}
                {goal.jobId === undefined ? null : <Link href={`/jobs/${goal.jobId}/edit`}>Change {goal.name}</Link>}
              </p>
            ) : null}
            <BenchStage
              bench={bench}
              asking={asking}
              problem={problem}
              fresh={fresh}
              onScan={scan}
              onAgain={() => void question(draft, goal, { aloud: true })}
              onDone={(what) => {
                giveFeedback('read');
                before.current = { day: latest.current.day, pairedLabel: latest.current.pairedLabel };
                keep(EMPTY_DRAFT);
                setDone(what);
              }}
              onChanged={(changed) => {
                void question({ ...draft, step: 'answer', pressed: undefined }, goal, { aloud: true }).then(() =>
                  setProblem(changed),
                );
              }}
            />
          </>
        )}
      </div>
    </Page>
  );
}
