'use client';

import Link from 'next/link';
import type { StepLine } from '@/app/_server/timeline/read-steps';
import { Code } from '@/app/_ui/code';
import { Fold } from '@/app/_ui/fold';
import type { TimeScale } from '@/app/_ui/rule/time-scale';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { PartChoice } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import { StepControls } from '@/app/(shop)/jobs/[id]/_ui/step-controls';
import { StepTrack } from '@/app/(shop)/jobs/[id]/_ui/step-track';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import type { StockRejudged } from '@/app/(shop)/jobs/[id]/say-rejudged';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { type StepCaution, type StepVerdict, type StepWord, wordOfCaution } from '@/shared/timeline/judge-timeline';
import { linksOf } from '@/shared/timeline/links-of';
import { sayStepCaution } from '@/shared/timeline/say-step';
import { dayOfStep } from '@/shared/timeline/step';
import { stepChange } from '@/shared/timeline/step-change';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

export type StepRowProps = {
  jobId: number;
  step: StepLine;
  /** The step as it is in the book. */
  before: StepLine;
  drafted: readonly StepLine[];
  parts: readonly PartChoice[];
  facts: TimelineFacts;
  verdict: StepVerdict | undefined;
  was: StepVerdict | undefined;
  stock: readonly StockRejudged[];
  scale: TimeScale;
  order: DateOrder;
  closed: boolean;
  /** The line of today stands above it. */
  startsToday: boolean;
  move: (stepId: number, day: CalendarDate, landing: 'exact' | 'open') => void;
  hold: (held: boolean) => void;
};

/** One step: its day, its name, what is to be minded, what hangs on it, and the keys that move or finish it. */
export function StepRow(props: StepRowProps) {
  const { jobId, step, before, drafted, parts, facts, verdict, was, stock, scale, order, closed, startsToday } = props;
  const { today } = facts;
  const done = step.doneOn !== null;
  const day = dayOfStep(step);
  const word = verdict?.word ?? 'use';
  const isMoved = !done && step.day !== before.day;
  const change = verdict && was ? stepChange(verdict, was) : undefined;
  const say = (date: CalendarDate) => `${sayWeekday(date)} ${sayDate(date, { order, today })}`;
  const sayOf = (caution: StepCaution) => sayStepCaution(caution, { today, order });
  const cautions = (verdict?.cautions ?? []).map((caution) => ({
    word: wordOfCaution(caution),
    says: sayOf(caution),
    isNew: change?.came.includes(caution),
  }));
  // With one part there is nothing to tell apart.
  const part = parts.length < 2 ? undefined : (parts.find(({ id }) => id === step.partId)?.name ?? 'Whole job');
  const canMove = !closed && !done;
  return (
    <li className={styles.step} data-done={done || undefined} data-moved={isMoved || undefined}>
      {startsToday ? <p className={styles.todayWord}>Today, {sayDate(today, { order, today })}</p> : null}
      <div className={styles.row}>
        <div className={styles.what}>
          <p className={styles.day}>
            <span>{say(day)}</span>
            {isMoved ? <span className={styles.soft}> was {sayDate(before.day, { order, today })}</span> : null}
            {part ? (
              <span className={styles.part} data-whole={step.partId === null || undefined}>
                {part}
              </span>
            ) : null}
          </p>
          <p className={styles.name}>
            <span className={styles.dot}>
              {done ? <span className={styles.doneDot} /> : <VerdictMark word={word} size={20} />}
            </span>
            <span>
              {done ? <span className="unseen">Done: </span> : <span className="unseen">{SAY_WORD[word]}: </span>}
              {step.name}
            </span>
          </p>
          {done ? <p className={styles.soft}>Done</p> : null}
          {change?.changed ? <Changed was={was?.word ?? word} now={word} /> : null}
        </div>
        <StepTrack
          scale={scale}
          today={today}
          dueOn={facts.dueOn}
          shut={facts.closed}
          day={day}
          wasDay={isMoved ? before.day : undefined}
          wait={waitOf(step, drafted, facts)}
          word={word}
          done={done}
          says={`${[step.name, ...(part ? [part] : []), say(day), SAY_WORD[word]].join(', ')}.`}
          onMove={canMove ? (to, landing) => props.move(step.id, to, landing) : undefined}
          onHold={props.hold}
        />
        {cautions.length > 0 || change?.went.length || step.note !== '' ? (
          <ul className={styles.cautions}>
            {cautions.map((caution) => (
              <li key={caution.says} data-word={caution.word}>
                {caution.says} {caution.isNew ? <span className={styles.changed}>New</span> : null}
              </li>
            ))}
            {change?.went.map((caution) => (
              <li key={`went ${sayOf(caution)}`} className={styles.went}>
                <span className={styles.changed}>No longer</span> <s>{sayOf(caution)}</s>
              </li>
            ))}
            {step.note !== '' ? <li className={styles.soft}>{step.note}</li> : null}
          </ul>
        ) : null}
        {stock.length > 0 ? (
          <ul className={styles.stock} aria-label={`What ${step.name} takes`}>
            {stock.map((line) => (
              <StockLine key={line.key} line={line} />
            ))}
          </ul>
        ) : null}
      </div>
      {closed ? null : (
        <Fold title={done ? sayDone(parts.length > 0) : 'Move it, or say it is done'} group="step">
          <StepControls
            jobId={jobId}
            step={step}
            drafted={drafted}
            parts={parts}
            facts={facts}
            order={order}
            move={props.move}
          />
        </Fold>
      )}
    </li>
  );
}

const sayDone = (hasParts: boolean) => (hasParts ? 'Not done, or another part?' : 'Not done after all?');

const SAY_WORD: Record<StepWord, string> = { use: 'Fits', care: 'Care', stop: 'Stop' };

function Changed({ was, now }: { was: StepWord; now: StepWord }) {
  return (
    <p className={styles.changed}>
      {was === now
        ? `Changed: still ${SAY_WORD[now]}, for other reasons`
        : `Changed: was ${SAY_WORD[was]}, now ${SAY_WORD[now]}`}
    </p>
  );
}

function StockLine({ line }: { line: StockRejudged }) {
  const title = (
    <>
      <b>{line.name}</b> {line.label ? <Code>{printOwnLabel(line.label as OwnLabelCode)}</Code> : null}
    </>
  );
  return (
    <li data-changed={line.changed !== null || undefined} data-gone={line.gone || undefined}>
      {line.gone ? <span className={styles.goneMark}>Gone</span> : <VerdictPill word={line.word} />}
      <span className={styles.stockWords}>
        {line.href ? <Link href={line.href}>{title}</Link> : title}
        {line.gone ? null : (
          <>
            <span className={styles.soft}>{line.how}</span> {line.says}
          </>
        )}
        {line.changed === null ? null : <span className={styles.changed}>{line.changed}</span>}
      </span>
    </li>
  );
}

/** The longest wait before a step, as a stretch of days. */
function waitOf(step: StepLine, steps: readonly StepLine[], facts: TimelineFacts) {
  const waits = linksOf(steps, facts)
    .filter(({ after, leastDays }) => after.id === step.id && leastDays > 0)
    .map(({ before, leastDays }) => ({ from: dayOfStep(before), to: addDays(dayOfStep(before), leastDays) }));
  return waits.sort((a, b) => (a.to < b.to ? 1 : -1))[0];
}
