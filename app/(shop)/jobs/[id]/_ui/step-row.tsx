'use client';

import Link from 'next/link';
import type { StepLine } from '@/app/_server/timeline/read-steps';
import { Code } from '@/app/_ui/code';
import { Fold } from '@/app/_ui/fold';
import type { TimeScale } from '@/app/_ui/rule/time-scale';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import { VERDICT_WORDS } from '@/app/_ui/verdict/word';
import { StepControls } from '@/app/(shop)/jobs/[id]/_ui/step-controls';
import { StepTrack } from '@/app/(shop)/jobs/[id]/_ui/step-track';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import type { StockRejudged } from '@/app/(shop)/jobs/[id]/actions';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { type StepVerdict, type StepWord, wordOfCaution } from '@/shared/timeline/judge-timeline';
import { linksOf } from '@/shared/timeline/links-of';
import { sayStepCaution } from '@/shared/timeline/say-step';
import { dayOfStep } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

export type StepRowProps = {
  jobId: number;
  step: StepLine;
  /** The step as it is in the book. */
  before: StepLine;
  drafted: readonly StepLine[];
  facts: TimelineFacts;
  verdict: StepVerdict | undefined;
  wasWord: StepWord | undefined;
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
  const { jobId, step, before, drafted, facts, verdict, wasWord, stock, scale, order, closed, startsToday } = props;
  const { today } = facts;
  const done = step.doneOn !== null;
  const day = dayOfStep(step);
  const word = verdict?.word ?? 'use';
  const isMoved = !done && step.day !== before.day;
  const changed = wasWord !== undefined && wasWord !== word;
  const say = (date: CalendarDate) => `${sayWeekday(date)} ${sayDate(date, { order, today })}`;
  const cautions = (verdict?.cautions ?? []).map((caution) => ({
    word: wordOfCaution(caution),
    says: sayStepCaution(caution, { today, order }),
  }));
  const canMove = !closed && !done;
  return (
    <li className={styles.step} data-done={done || undefined} data-moved={isMoved || undefined}>
      {startsToday ? <p className={styles.todayWord}>Today, {sayDate(today, { order, today })}</p> : null}
      <div className={styles.row}>
        <div className={styles.what}>
          <p className={styles.day}>
            {say(day)}
            {isMoved ? <span className={styles.soft}> was {sayDate(before.day, { order, today })}</span> : null}
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
          {changed ? <Changed was={wasWord} now={word} /> : null}
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
          says={`${step.name}, ${say(day)}, ${SAY_WORD[word]}.`}
          onMove={canMove ? (to, landing) => props.move(step.id, to, landing) : undefined}
          onHold={props.hold}
        />
        {cautions.length > 0 || step.note !== '' ? (
          <ul className={styles.cautions}>
            {cautions.map((caution) => (
              <li key={caution.says} data-word={caution.word}>
                {caution.says}
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
        <Fold title={done ? 'Not done after all?' : 'Move it, or say it is done'} group="step">
          <StepControls jobId={jobId} step={step} drafted={drafted} facts={facts} order={order} move={props.move} />
        </Fold>
      )}
    </li>
  );
}

const SAY_WORD: Record<StepWord, string> = { use: 'Fits', care: 'Care', stop: 'Stop' };

function Changed({ was, now }: { was: StepWord; now: StepWord }) {
  return (
    <p className={styles.changed}>
      Changed: was {SAY_WORD[was]}, now {SAY_WORD[now]}
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
    <li data-changed={line.was !== null || undefined}>
      <VerdictPill word={line.word} />
      <span className={styles.stockWords}>
        {line.href ? <Link href={line.href}>{title}</Link> : title}
        <span className={styles.soft}>{line.how}</span> {line.says}
        {line.was === null ? null : (
          <span className={styles.changed}>
            Changed:{' '}
            {line.was === 'not there'
              ? 'it takes the place of another'
              : `was ${VERDICT_WORDS[line.was]}, now ${VERDICT_WORDS[line.word]}`}
          </span>
        )}
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
