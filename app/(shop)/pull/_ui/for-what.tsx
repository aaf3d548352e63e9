'use client';

import { useState } from 'react';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import { PURPOSE_WORDS, sayAway, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { DayField } from '@/app/(shop)/pull/_ui/day-field';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { goalOfJob, NO_JOB_WORDS, type PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { PURPOSES, type Purpose } from '@/shared/shelf-life/types/verdict';

export type ForWhatProps = {
  jobs: readonly JobLine[];
  goal?: PullGoal;
  notice?: string;
  today: CalendarDate;
  dateOrder: DateOrder;
  onChoose: (goal: PullGoal) => void;
  /** Back to what was going on, where something was. */
  onKeep?: () => void;
};

/** The first question: for which job, or for whose piece and which day. */
export function ForWhat({ jobs, goal, notice, today, dateOrder, onChoose, onKeep }: ForWhatProps) {
  const [purpose, setPurpose] = useState<Purpose>();
  const [day, setDay] = useState<CalendarDate | undefined>(today);

  const past = day !== undefined && day < today;

  if (purpose) {
    return (
      <form
        className={styles.stage}
        onSubmit={(submit) => {
          submit.preventDefault();
          if (day && !past) onChoose({ name: '', purpose, day });
        }}
      >
        <h2 className={styles.question}>On which day is it used?</h2>
        <p className={styles.soft}>
          For {NO_JOB_WORDS[purpose]}. The day that counts is the last lift of the pour, or the last coat.
        </p>
        <DayField
          label="Day of use"
          first={today}
          today={today}
          order={dateOrder}
          error={past ? PAST_DAY : undefined}
          onDay={setDay}
        />
        <KeyBar>
          <Key type="submit" disabled={!day || past}>
            {day && !past
              ? `Pull for ${NO_JOB_WORDS[purpose]}, ${sayDay(day, { today, order: dateOrder })}`
              : past
                ? 'Give today or a day to come'
                : 'Give the day first'}
          </Key>
          <Key variant="ghost" onClick={() => setPurpose(undefined)}>
            Back to the jobs
          </Key>
        </KeyBar>
      </form>
    );
  }

  return (
    <div className={styles.stage}>
      <h2 className={styles.question}>For what?</h2>
      {notice ? <p role="status">{notice}</p> : null}
      {jobs.length === 0 ? (
        <p className={styles.soft}>No job is open. Add one, and its day of use is asked only once.</p>
      ) : (
        <ul className={styles.choices} aria-label="Open jobs">
          {jobs.map((job) => (
            <li key={job.id}>
              <button
                type="button"
                className={styles.choice}
                aria-current={goal?.jobId === job.id ? 'true' : undefined}
                onClick={() => onChoose(goalOfJob(job))}
              >
                <span className={styles.choiceName}>{job.name}</span>
                <span className={styles.choiceDay}>{sayDate(job.dayOfUse, { order: dateOrder, today })}</span>
                <span className={styles.soft}>{sayWhose(job)}</span>
                <span className={styles.soft}>{sayAway(job.dayOfUse, today)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <Section title="No job">
        <div className={styles.threeKeys}>
          {PURPOSES.map((one) => (
            <Key key={one} variant="ghost" onClick={() => setPurpose(one)}>
              {PURPOSE_WORDS[one]}
            </Key>
          ))}
        </div>
      </Section>
      <KeyBar>
        {onKeep ? (
          <Key variant="ghost" onClick={onKeep}>
            Leave it as it is
          </Key>
        ) : null}
        <LinkKey variant="ghost" href="/jobs/new?then=pull">
          Add a job
        </LinkKey>
      </KeyBar>
    </div>
  );
}

export const PAST_DAY = 'That day has passed. Give today or a day to come.';

export function sayDay(day: CalendarDate, { today, order }: { today: CalendarDate; order: DateOrder }): string {
  return day === today ? 'today' : sayDate(day, { order, today });
}
