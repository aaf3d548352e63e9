'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { JobFields } from '@/app/_server/jobs/add-job';
import type { ChangeJob } from '@/app/_server/jobs/change-job';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { addJobAction, changeJobAction } from '@/app/(shop)/jobs/actions';
import { sayDueTooEarly } from '@/app/(shop)/jobs/say-due';
import { caughtUp, type TypedJob, typedJob } from '@/app/(shop)/jobs/typed-job';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { PURPOSES, type Purpose } from '@/shared/shelf-life/types/verdict';
import type { ReadyDays } from '@/shared/timeline/ready-days';

export type JobFormProps = {
  /** The job that is changed; a new one without it. */
  job?: JobLine;
  today: CalendarDate;
  dateOrder: DateOrder;
  /** Where a new job goes on: back to the bench that asked for it. */
  then?: 'pull';
  /** Its day of use follows its time line, and is not typed. */
  follows?: boolean;
  /** When it is ready by its own time line: a due day before that is warned of as it is typed. */
  ready?: ReadyDays;
};

const CHOICES: Record<Purpose, { label: string; hint: string }> = {
  client: { label: 'A client’s', hint: 'out of date is Stop' },
  own: { label: 'My own', hint: 'out of date is Care' },
  test: { label: 'A test', hint: 'out of date is Care' },
};

const STAGES = [
  { value: 'asked', label: 'Asked for' },
  { value: 'quoted', label: 'Quoted' },
  { value: 'agreed', label: 'Agreed' },
];

/** The job as the form was opened on it. */
const wasOf = ({ name, purpose, client, dayOfUse, note, dueOn, contact }: JobLine): JobFields => ({
  name,
  purpose,
  client,
  dayOfUse,
  note,
  dueOn,
  contact,
});

/** A job: its name, whose piece it is, and the day that counts. */
export function JobForm({ job, today, dateOrder, then, follows = false, ready = {} }: JobFormProps) {
  const router = useRouter();
  const say = useNotice();
  const adding = useAct(addJobAction);
  const changing = useAct(changeJobAction);
  const [typed, setTyped] = useState(() => typedJob(job, dateOrder));
  // What the form was opened on: the book refuses a change of anything else, and says what is otherwise by now.
  const [opened, setOpened] = useState(job);
  const [stale, setStale] = useState(false);
  if (stale && job && job !== opened) {
    setStale(false);
    setOpened(job);
    setTyped(caughtUp(typed, typedJob(opened, dateOrder), typedJob(job, dateOrder)));
  }
  const { name, purpose, client, contact, note, dayOfUse: dayText, dueOn: dueText } = typed;
  const set = (field: keyof TypedJob) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const [stage, setStage] = useState('agreed');
  const [faults, setFaults] = useState<Record<string, string>>({});

  const read = readTypedDate(dayText, { today, order: dateOrder, aim: 'ahead' });
  const day = read.ok && !read.value.ambiguous && read.value.precision === 'day' ? read.value.date : undefined;
  const readDue = readTypedDate(dueText, { today, order: dateOrder, aim: 'ahead' });
  const due =
    readDue.ok && !readDue.value.ambiguous && readDue.value.precision === 'day' ? readDue.value.date : undefined;
  const noDue = dueText.trim() === '';
  const tooEarly = due
    ? sayDueTooEarly(due, { work: follows ? undefined : day, ...ready }, { today, order: dateOrder })
    : [];
  const problem = job ? changing.problem : adding.problem;
  /** A fault is said until it is put right, not until the key is pressed again. */
  const mended: Record<string, boolean> = {
    name: name.trim() !== '',
    dayOfUse: day !== undefined,
    dueOn: noDue || due !== undefined,
  };
  const error = (field: string) => (mended[field] ? undefined : faults[field]) ?? problem?.fields?.[field];

  async function keep() {
    const found: Record<string, string> = {};
    if (name.trim() === '') found.name = 'Give the job a name, for example River desk.';
    if (!day) found.dayOfUse = 'Give one whole day, for example 12 Dec 2026.';
    if (!noDue && !due) found.dueOn = 'Give one whole day, for example 12 Dec 2026, or leave it empty.';
    setFaults(found);
    if (!day || Object.keys(found).length > 0) return giveFeedback('error');
    const fields: JobFields = {
      name,
      purpose,
      client: purpose === 'client' ? client : '',
      dayOfUse: day,
      note,
      dueOn: due ?? null,
      contact: purpose === 'client' ? contact : '',
    };
    if (job && opened) {
      const change: ChangeJob = { ...fields, jobId: job.id, was: wasOf(opened) };
      const answered = await changing.run(change);
      if (!answered.ok) {
        if (answered.problem.code === 'job-changed-meanwhile') {
          setStale(true);
          router.refresh();
        }
        return giveFeedback('error');
      }
      say({ words: `${name.trim()} is changed.` });
      return router.push(`/jobs/${job.id}`);
    }
    const answered = await adding.run({ ...fields, stage });
    if (!answered.ok) return giveFeedback('error');
    const { jobId } = answered.answer;
    say({ words: `${answered.answer.name} is in the book.` });
    router.push(then === 'pull' ? `/pull?job=${jobId}` : `/jobs/${jobId}`);
  }

  const named = name.trim() || 'the job';
  return (
    <form
      className={styles.form}
      onSubmit={(submit) => {
        submit.preventDefault();
        void keep();
      }}
    >
      <div className={styles.fields}>
        <TextField
          label="Name"
          hint="What you call it in the shop."
          value={name}
          onChange={set('name')}
          maxLength={120}
          error={error('name')}
          autoFocus={!job}
        />
        <ChoiceChips
          label="Whose piece is it?"
          options={PURPOSES.map((value) => ({ value, ...CHOICES[value] }))}
          value={purpose}
          onChange={set('purpose')}
          error={error('purpose')}
        />
        {purpose === 'client' ? (
          <TextField
            label="Client"
            optional
            value={client}
            onChange={set('client')}
            maxLength={120}
            error={error('client')}
          />
        ) : null}
        {purpose === 'client' ? (
          <TextField
            label="Contact"
            hint="How to reach them: a number, an address."
            optional
            value={contact}
            onChange={set('contact')}
            maxLength={300}
            error={error('contact')}
          />
        ) : null}
        {follows ? (
          <p className={styles.follows}>
            <b>Day of use: {dayText}.</b> It follows the last lift or coat of the time line: move that, and it moves.
          </p>
        ) : (
          <DateTextField
            label="Day of use"
            hint="The day that counts: the last lift of the pour, or the last coat of finish."
            today={today}
            order={dateOrder}
            aim="ahead"
            value={dayText}
            onChange={set('dayOfUse')}
            error={error('dayOfUse')}
          />
        )}
        <DateTextField
          label="Due day"
          hint="The day it is promised for."
          optional
          today={today}
          order={dateOrder}
          aim="ahead"
          value={dueText}
          onChange={set('dueOn')}
          error={error('dueOn')}
        />
        {tooEarly.map((says) => (
          <p key={says} className={styles.warning} role="status">
            {says}
          </p>
        ))}
        {job ? null : (
          <ChoiceChips
            label="Where does it stand?"
            options={STAGES}
            value={stage}
            onChange={setStage}
            error={error('stage')}
          />
        )}
        {day && day < today ? (
          <p className={styles.warning} role="status">
            That day has passed. The job is kept so, but what is pulled for it is judged for today.
          </p>
        ) : null}
        <TextField
          label="Note"
          optional
          lines={3}
          value={note}
          onChange={set('note')}
          maxLength={2000}
          error={error('note')}
        />
        {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      </div>
      <KeyBar>
        <Key type="submit" pending={adding.pending || changing.pending} pendingWords="Writing into the book">
          {job ? `Change ${named}` : `Add ${named}`}
        </Key>
        <LinkKey variant="ghost" href={job ? `/jobs/${job.id}` : then === 'pull' ? '/pull' : '/jobs'}>
          Leave it
        </LinkKey>
      </KeyBar>
    </form>
  );
}
