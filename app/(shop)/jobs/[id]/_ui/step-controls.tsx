'use client';

import { useState } from 'react';
import type { StepLine } from '@/app/_server/timeline/read-steps';
import { useAct } from '@/app/_ui/act/use-act';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { PartChoice } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import { StepPart } from '@/app/(shop)/jobs/[id]/_ui/step-part';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import { changeStepAction, finishStepAction, removeStepAction, reopenStepAction } from '@/app/(shop)/jobs/[id]/actions';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { laterOf } from '@/shared/calendar/later-of';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { cureHold } from '@/shared/timeline/cure-hold';
import { dayThatCounts } from '@/shared/timeline/last-use';
import { sayCureHold } from '@/shared/timeline/say-cure-hold';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

export type StepControlsProps = {
  jobId: number;
  step: StepLine;
  drafted: readonly StepLine[];
  parts: readonly PartChoice[];
  facts: TimelineFacts;
  order: DateOrder;
  move: (stepId: number, day: CalendarDate, landing: 'exact' | 'open') => void;
};

/** The keys of one step: earlier, later, another day, done, another name, off. */
export function StepControls({ jobId, step, drafted, parts, facts, order, move }: StepControlsProps) {
  const { today } = facts;
  const say = useNotice();
  const reopening = useAct(reopenStepAction);
  const removal = useAct(removeStepAction);
  const naming = useAct(changeStepAction);
  const [dayText, setDayText] = useState('');
  const [name, setName] = useState(step.name);
  const [note, setNote] = useState(step.note);
  const problem = reopening.problem ?? removal.problem ?? naming.problem;
  const shown = problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null;

  async function reopen() {
    const answered = await reopening.run({ stepId: step.id });
    if (!answered.ok) return giveFeedback('error');
    say({ words: `${step.name} is to be done again.` });
  }
  async function remove() {
    const answered = await removal.run({ stepId: step.id });
    if (!answered.ok) return giveFeedback('error');
    say({ words: `${step.name} is off the time line. The history can bring it back.` });
  }
  async function rename() {
    const answered = await naming.run({ stepId: step.id, name, note });
    if (!answered.ok) return giveFeedback('error');
    say({ words: `It is called ${name.trim()} now.` });
  }

  if (step.doneOn !== null) {
    const part = <StepPart key={step.partId} step={step} parts={parts} />;
    if (step.ofPour)
      return (
        <div className={styles.controls}>
          <p className={styles.soft}>It was poured. A pour written by mistake is reversed in the history.</p>
          {part}
        </div>
      );
    return (
      <div className={styles.controls}>
        {shown}
        <Key variant="ghost" pending={reopening.pending} pendingWords="Writing" onClick={() => void reopen()}>
          {step.name} is not done
        </Key>
        {part}
      </div>
    );
  }
  const takesStock = step.kind === 'coat' || step.kind === 'lift' || step.kind === 'seal';
  const useDay = dayThatCounts(step, drafted);
  return (
    <div className={styles.controls}>
      <div className={styles.keys}>
        <Key variant="ghost" onClick={() => move(step.id, addDays(step.day, -1), 'open')}>
          A day earlier
        </Key>
        <Key variant="ghost" onClick={() => move(step.id, addDays(step.day, 1), 'open')}>
          A day later
        </Key>
        {takesStock && !step.ofPour ? (
          <LinkKey variant="ghost" href={`/pull?job=${jobId}&day=${laterOf(useDay, today)}`}>
            Pull for it
          </LinkKey>
        ) : null}
      </div>
      <DateTextField
        label={`Another day for ${step.name}`}
        hint={`It is on ${sayDate(step.day, { order, today })}. The verdicts below follow as soon as the day reads.`}
        optional
        today={today}
        order={order}
        aim="ahead"
        value={dayText}
        onChange={(text, reading) => {
          setDayText(text);
          if (reading && !reading.ambiguous && reading.precision === 'day') move(step.id, reading.date, 'exact');
        }}
      />
      {step.ofPour ? (
        <p className={styles.soft}>It is done by being poured, from its pour below.</p>
      ) : (
        <Finish step={step} drafted={drafted} facts={facts} order={order} />
      )}
      <StepPart key={step.partId} step={step} parts={parts} />
      <TextField
        label={`Name of ${step.name}`}
        value={name}
        onChange={setName}
        maxLength={120}
        error={naming.problem?.fields?.name}
      />
      <TextField label={`Note on ${step.name}`} optional value={note} onChange={setNote} maxLength={2000} />
      {shown}
      <div className={styles.keys}>
        <Key
          variant="ghost"
          pending={naming.pending}
          pendingWords="Writing"
          disabled={name.trim() === step.name && note.trim() === step.note}
          onClick={() => void rename()}
        >
          Write the name and note
        </Key>
        {step.ofPour ? null : (
          <Key variant="ghost" pending={removal.pending} pendingWords="Writing" onClick={() => void remove()}>
            Take it off the time line
          </Key>
        )}
      </div>
    </div>
  );
}

/** Says a step is done on a day. What still cures is said before the press, and its reason asked for. */
function Finish({ step, drafted, facts, order }: Pick<StepControlsProps, 'step' | 'drafted' | 'facts' | 'order'>) {
  const { today } = facts;
  const { run, pending, problem } = useAct(finishStepAction);
  const say = useNotice();
  const [text, setText] = useState('today');
  const [reason, setReason] = useState('');
  const [pressed, setPressed] = useState(false);
  const read = text.trim().toLowerCase() === 'today' ? undefined : readTypedDate(text, { today, order, aim: 'past' });
  const day =
    read === undefined
      ? today
      : read.ok && !read.value.ambiguous && read.value.precision === 'day'
        ? read.value.date
        : undefined;
  const hold = day && cureHold(step, day, drafted, facts);
  const date = (one: CalendarDate) => sayDate(one, { order, today });

  async function finish() {
    setPressed(true);
    if (!day || (hold && reason.trim() === '')) return giveFeedback('error');
    const answered = await run({ stepId: step.id, doneOn: day, reason });
    if (!answered.ok) return giveFeedback('error');
    say({ words: `${step.name} is done.` });
  }

  return (
    <div className={styles.finish}>
      <TextField
        label={`Day ${step.name} was done`}
        hint="today, or an earlier day"
        value={text}
        onChange={setText}
        echo={
          day
            ? { ok: true, says: `Done on ${date(day)}.` }
            : { ok: false, says: 'Type today, or one whole day, for example 12 Dec.' }
        }
        error={problem?.fields?.doneOn}
      />
      {hold || problem?.code === 'cure-hold' ? (
        <>
          {hold ? (
            <p className={styles.held} role="status">
              <b>Held:</b> {sayCureHold(hold, date)} Going on now needs a reason.
            </p>
          ) : null}
          <TextField
            label="Why it goes on all the same"
            value={reason}
            onChange={setReason}
            maxLength={500}
            error={
              problem?.fields?.reason ??
              (pressed && reason.trim() === '' ? 'Write why, in a few words: it stays in the history.' : undefined)
            }
          />
        </>
      ) : null}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        <Key
          variant={hold ? 'stop' : 'main'}
          pending={pending}
          pendingWords="Writing into the book"
          onClick={() => void finish()}
        >
          {hold ? `${step.name} is done all the same` : `${step.name} is done`}
        </Key>
      </div>
    </div>
  );
}
