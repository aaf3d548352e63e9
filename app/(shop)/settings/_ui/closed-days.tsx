'use client';

import { useState } from 'react';
import type { ClosedLine } from '@/app/_server/timeline/read-closed-days';
import { useAct } from '@/app/_ui/act/use-act';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { addClosedDaysAction, removeClosedDaysAction, setClosedWeekdaysAction } from '@/app/(shop)/settings/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';

const WEEK = [
  { value: '1', label: 'Mon' },
  { value: '2', label: 'Tue' },
  { value: '3', label: 'Wed' },
  { value: '4', label: 'Thu' },
  { value: '5', label: 'Fri' },
  { value: '6', label: 'Sat' },
  { value: '0', label: 'Sun' },
];

/** When nobody works: plans step over these days, and say so where something stands on one. */
export function ClosedDaysForm({
  weekdays,
  ranges,
  today,
  order,
}: {
  weekdays: readonly number[];
  ranges: readonly ClosedLine[];
  today: CalendarDate;
  order: DateOrder;
}) {
  const setting = useAct(setClosedWeekdaysAction);
  const removal = useAct(removeClosedDaysAction);
  const say = useNotice();
  const [days, setDays] = useState(weekdays.map(String));
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const [name, setName] = useState('');
  const problem = setting.problem ?? removal.problem;
  const same = [...days].sort().join() === weekdays.map(String).sort().join();
  const date = (day: CalendarDate) => sayDate(day, { order, today });
  const read = (text: string) => {
    const typed = readTypedDate(text, { today, order, aim: 'ahead' });
    return typed.ok && !typed.value.ambiguous && typed.value.precision === 'day' ? typed.value.date : '';
  };

  async function set() {
    const answered = await setting.run({ weekdays: days.map(Number) });
    if (answered.ok) say({ words: 'The closed days of the week are set, for every plan.' });
  }
  async function remove({ id, name: called }: ClosedLine) {
    const answered = await removal.run({ id });
    if (answered.ok) say({ words: `${called || 'That'} is taken off: the workshop is open then.` });
  }

  return (
    <div className={styles.form}>
      <CheckChips label="Closed every week on" options={WEEK} values={days} onChange={setDays} />
      <Key pending={setting.pending} pendingWords="Writing" disabled={same} onClick={() => void set()}>
        {same ? 'No day of the week is changed' : 'Set the closed days of the week'}
      </Key>
      {ranges.length > 0 ? (
        <ul className={styles.closed} aria-label="Closed besides">
          {ranges.map((range) => (
            <li key={range.id}>
              <span>
                <b>{range.name || 'Closed'}</b> {date(range.from)}
                {range.to === range.from ? '' : ` to ${date(range.to)}`}
              </span>
              <Key variant="ghost" pending={removal.pending} pendingWords="Writing" onClick={() => void remove(range)}>
                Take {range.name || 'it'} off
              </Key>
            </li>
          ))}
        </ul>
      ) : null}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Fold title="Close it for some days">
        <ActForm
          action={addClosedDaysAction}
          input={{ from: read(from), to: read(to.trim() === '' ? from : to), name }}
          words="Close the workshop then"
          done="The workshop is closed then. Plans step over these days."
          onDone={() => {
            setFrom('');
            setTo('');
            setName('');
          }}
        >
          {(errors) => (
            <>
              <DateTextField
                label="First closed day"
                today={today}
                order={order}
                aim="ahead"
                value={from}
                onChange={(text) => setFrom(text)}
                error={read(from) === '' ? errors.from : undefined}
              />
              <DateTextField
                label="Last closed day"
                hint="The same day where it is one."
                optional
                today={today}
                order={order}
                aim="ahead"
                value={to}
                onChange={(text) => setTo(text)}
                error={errors.to}
              />
              <TextField
                label="What for"
                optional
                value={name}
                onChange={setName}
                maxLength={120}
                error={errors.name}
              />
            </>
          )}
        </ActForm>
      </Fold>
    </div>
  );
}
