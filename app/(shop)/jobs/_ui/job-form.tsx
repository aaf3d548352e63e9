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
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { PURPOSES, type Purpose } from '@/shared/shelf-life/types/verdict';

export type JobFormProps = {
  /** The job that is changed; a new one without it. */
  job?: JobLine;
  today: CalendarDate;
  dateOrder: DateOrder;
  /** Where a new job goes on: back to the bench that asked for it. */
  then?: 'pull';
  /** Its day of use follows its time line, and is not typed. */
  follows?: boolean;
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

/** A job: its name, whose piece it is, and the day that counts. */
export function JobForm({ job, today, dateOrder, then, follows = false }: JobFormProps) {
  const router = useRouter();
  const say = useNotice();
  const adding = useAct(addJobAction);
  const changing = useAct(changeJobAction);
  const [name, setName] = useState(job?.name ?? '');
  const [purpose, setPurpose] = useState<Purpose>(job?.purpose ?? 'client');
  const [client, setClient] = useState(job?.client ?? '');
  const [dayText, setDayText] = useState(job ? sayDate(job.dayOfUse, { order: dateOrder }) : '');
  const [note, setNote] = useState(job?.note ?? '');
  const [dueText, setDueText] = useState(job?.dueOn ? sayDate(job.dueOn, { order: dateOrder }) : '');
  const [contact, setContact] = useState(job?.contact ?? '');
  const [stage, setStage] = useState('agreed');
  const [faults, setFaults] = useState<Record<string, string>>({});

  const read = readTypedDate(dayText, { today, order: dateOrder, aim: 'ahead' });
  const day = read.ok && !read.value.ambiguous && read.value.precision === 'day' ? read.value.date : undefined;
  const readDue = readTypedDate(dueText, { today, order: dateOrder, aim: 'ahead' });
  const due =
    readDue.ok && !readDue.value.ambiguous && readDue.value.precision === 'day' ? readDue.value.date : undefined;
  const noDue = dueText.trim() === '';
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
    if (job) {
      const change: ChangeJob = { ...fields, jobId: job.id, state: job.state };
      const answered = await changing.run(change);
      if (!answered.ok) return giveFeedback('error');
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
          onChange={setName}
          maxLength={120}
          error={error('name')}
          autoFocus={!job}
        />
        <ChoiceChips
          label="Whose piece is it?"
          options={PURPOSES.map((value) => ({ value, ...CHOICES[value] }))}
          value={purpose}
          onChange={(value) => setPurpose(PURPOSES.find((one) => one === value) ?? 'client')}
          error={error('purpose')}
        />
        {purpose === 'client' ? (
          <TextField
            label="Client"
            optional
            value={client}
            onChange={setClient}
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
            onChange={setContact}
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
            onChange={(text) => setDayText(text)}
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
          onChange={(text) => setDueText(text)}
          error={error('dueOn')}
        />
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
          onChange={setNote}
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
