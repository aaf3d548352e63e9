'use client';

import { useRef, useState } from 'react';
import type { StepLine } from '@/app/_server/timeline/read-steps';
import type { SaidStock } from '@/app/_server/timeline/say-stock';
import { useAct } from '@/app/_ui/act/use-act';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { Rule } from '@/app/_ui/rule/rule';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { AddStepFold } from '@/app/(shop)/jobs/[id]/_ui/add-step-fold';
import type { PartChoice } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import { StepRow } from '@/app/(shop)/jobs/[id]/_ui/step-row';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import { useDraft } from '@/app/(shop)/jobs/[id]/_ui/use-draft';
import { useScale } from '@/app/(shop)/jobs/[id]/_ui/use-scale';
import { moveStepsAction } from '@/app/(shop)/jobs/[id]/actions';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { judgeTimeline } from '@/shared/timeline/judge-timeline';
import { dayOfStep, inOrder } from '@/shared/timeline/step';
import { stepChange } from '@/shared/timeline/step-change';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

export type TimeLineProps = {
  jobId: number;
  steps: readonly StepLine[];
  /** The parts of the job, in their order. */
  parts: readonly PartChoice[];
  facts: TimelineFacts;
  stock: readonly SaidStock[];
  order: DateOrder;
  /** The job is over: nothing moves any more. */
  closed: boolean;
};

/**
 * The steps of a job, drawn on a rule on a wide screen, down a line on a phone. A day is moved by dragging it, by the
 * arrow keys, or in its field; what changes is marked before anything is kept.
 */
export function TimeLine({ jobId, steps, parts, facts, stock, order, closed }: TimeLineProps) {
  const [push, setPush] = useState(true);
  const { drafted, moves, move, clear, stock: rejudged, trouble, asking } = useDraft(jobId, steps, facts, push);
  const { run, pending, problem, forget } = useAct(moveStepsAction);
  const say = useNotice();
  // While a step is dragged its day is reckoned from where all stood when it was taken up, so that nothing stays pushed.
  const base = useRef<readonly StepLine[]>(undefined);
  const { today } = facts;
  // In the order the book has, until the new days are kept: a row that is moved keeps its place, and with it the focus.
  const draftOf = new Map(drafted.map((step) => [step.id, step]));
  const ordered = inOrder(steps).map((step) => draftOf.get(step.id) ?? step) as StepLine[];
  const now = new Map(judgeTimeline(drafted, facts).map((verdict) => [verdict.stepId, verdict]));
  const was = new Map(judgeTimeline(steps, facts).map((verdict) => [verdict.stepId, verdict]));
  const { scale, hold } = useScale(ordered, facts);
  const stockNow = rejudged ?? stock.map((line) => ({ ...line, changed: null, gone: false }));
  const changedSteps = [...now.values()].filter(
    (verdict) => stepChange(verdict, was.get(verdict.stepId)).changed,
  ).length;
  const changed = changedSteps + stockNow.filter((line) => line.changed !== null).length;
  const shown = new Set(steps.map(({ id }) => id));
  const loose = stockNow.filter(({ stepId }) => stepId === null || !shown.has(stepId));
  const todayAt = inOrder(steps).findIndex((step) => dayOfStep(step) >= today);

  async function keep() {
    const answered = await run({ jobId, moves });
    if (!answered.ok) return giveFeedback('error');
    clear();
    const count = answered.answer.moves.length;
    say({ words: `${count === 1 ? 'One day is' : `${count} days are`} moved. The history can move them back.` });
  }

  return (
    <div className={styles.timeLine}>
      {steps.length === 0 ? (
        <p className={styles.soft}>
          No step is planned yet. Add the first below; a pour and the coats of a finish put theirs here by themselves.
        </p>
      ) : (
        <>
          <div className={styles.head}>
            {closed ? null : (
              <CheckChips
                label="When a day is moved"
                options={[{ value: 'push', label: 'Push what waits for it', hint: 'onto the next open day' }]}
                values={push ? ['push'] : []}
                onChange={(values) => setPush(values.length > 0)}
              />
            )}
            <div className={styles.rule}>
              <p className={styles.legend}>
                Hatched: closed. {facts.dueOn === null ? '' : 'Dashed red: due. '}Bars: what has to be waited for.
              </p>
              <Rule scale={scale} />
            </div>
          </div>
          <svg width="0" height="0" aria-hidden="true" focusable="false" className={styles.patterns}>
            <pattern id="shut-days" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <rect width="6" height="6" className={styles.shut} />
              <line x1="0" y1="0" x2="0" y2="6" className={styles.hatch} />
            </pattern>
          </svg>
          <ol className={styles.steps} aria-label="Steps of the job">
            {ordered.map((step, nr) => (
              <StepRow
                key={step.id}
                jobId={jobId}
                step={step}
                before={steps.find(({ id }) => id === step.id) ?? step}
                drafted={drafted}
                parts={parts}
                facts={facts}
                verdict={now.get(step.id)}
                was={was.get(step.id)}
                stock={stockNow.filter(({ stepId }) => stepId === step.id)}
                scale={scale}
                order={order}
                closed={closed}
                startsToday={nr === todayAt}
                move={(stepId, day, landing) => move(stepId, day, landing, base.current)}
                hold={(held) => {
                  base.current = held ? drafted : undefined;
                  hold(held);
                }}
              />
            ))}
          </ol>
          {loose.length > 0 ? (
            <p className={styles.soft}>
              {loose.length === 1 ? 'One thing hangs' : `${loose.length} things hang`} on the day of use and on no step:{' '}
              {loose.map(({ name, says, changed: how }) => `${name}: ${says}${how ? ` ${how}.` : ''}`).join(' ')}
            </p>
          ) : null}
        </>
      )}
      {moves.length > 0 ? (
        <div className={styles.draft}>
          <p role="status">
            <b>{moves.length === 1 ? 'One day is moved' : `${moves.length} days are moved`}, not yet in the book.</b>{' '}
            {asking
              ? 'Judging what hangs on them.'
              : changed === 0
                ? 'No verdict changes.'
                : `${changed === 1 ? 'One verdict changes' : `${changed} verdicts change`}, marked above.`}{' '}
            {moves.length <= 3
              ? moves
                  .map(
                    ({ stepId, to }) =>
                      `${steps.find(({ id }) => id === stepId)?.name}: ${sayDate(to, { order, today })}.`,
                  )
                  .join(' ')
              : ''}
          </p>
          {trouble ? <p role="alert">{trouble}</p> : null}
          {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
          <div className={styles.keys}>
            <Key pending={pending} pendingWords="Writing into the book" onClick={() => void keep()}>
              Keep the new days
            </Key>
            <Key
              variant="ghost"
              onClick={() => {
                clear();
                forget();
              }}
            >
              Leave them
            </Key>
          </div>
        </div>
      ) : null}
      {closed ? null : <AddStepFold jobId={jobId} parts={parts} today={today} order={order} />}
    </div>
  );
}
