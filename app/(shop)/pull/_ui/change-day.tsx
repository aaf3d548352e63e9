'use client';

import { useState } from 'react';
import { Key, KeyBar } from '@/app/_ui/keys';
import { DayField } from '@/app/(shop)/pull/_ui/day-field';
import { PAST_DAY, sayDay } from '@/app/(shop)/pull/_ui/for-what';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { type PullGoal, sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';

export type ChangeDayProps = {
  goal: PullGoal;
  day: CalendarDate;
  today: CalendarDate;
  dateOrder: DateOrder;
  onDay: (day: CalendarDate) => void;
  onKeep: () => void;
};

/** Another day of use for this one pull; the job keeps its own. */
export function ChangeDay({ goal, day, today, dateOrder, onDay, onKeep }: ChangeDayProps) {
  const [typed, setTyped] = useState<CalendarDate | undefined>(day);
  const offers = [...new Set([today, goal.day])].filter((one) => one !== day && one >= today);
  const past = typed !== undefined && typed < today;
  return (
    <form
      className={styles.stage}
      onSubmit={(submit) => {
        submit.preventDefault();
        if (typed && !past) onDay(typed);
      }}
    >
      <h2 className={styles.question}>Used on which day?</h2>
      <p className={styles.soft}>
        Only for this pull. {goal.jobId === undefined ? '' : `${sayGoal(goal)} keeps its own day.`}
      </p>
      {offers.length > 0 ? (
        <div className={styles.threeKeys}>
          {offers.map((one) => (
            <Key key={one} variant="ghost" onClick={() => onDay(one)}>
              {one === today
                ? 'Today'
                : `${goal.name ? 'The job’s day' : 'As before'}, ${sayDay(one, { today, order: dateOrder })}`}
            </Key>
          ))}
        </div>
      ) : null}
      <DayField
        label="Day of use"
        hint="The last lift of the pour, or the last coat."
        first={day}
        today={today}
        order={dateOrder}
        error={past ? PAST_DAY : undefined}
        onDay={setTyped}
      />
      <KeyBar>
        <Key type="submit" disabled={!typed || past}>
          {typed && !past
            ? `Judge it for ${sayDay(typed, { today, order: dateOrder })}`
            : past
              ? 'Give today or a day to come'
              : 'Give one whole day'}
        </Key>
        <Key variant="ghost" onClick={onKeep}>
          Leave the day
        </Key>
      </KeyBar>
    </form>
  );
}
