'use client';

import { useState } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import type { Echo } from '@/app/_ui/field/field-shell';
import { TextField, type TextFieldProps } from '@/app/_ui/field/text-field';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateAim, DateOrder, DateReading } from '@/shared/calendar/date-readings';
import { readTypedDate, type TypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDateError } from '@/shared/calendar/say-date-error';
import { sayWeekday } from '@/shared/calendar/say-weekday';

export interface DateTextFieldProps
  extends Omit<TextFieldProps, 'echo' | 'onChange' | 'type' | 'value' | 'defaultValue' | 'lines'> {
  today: CalendarDate;
  /** Which number of 12/05/2026 is the day, as the workshop has set it. */
  order: DateOrder;
  /**
   * Whether the day is to come or has been: it is then taken in the workshop's order, and what else it can mean is offered.
   * Without it the date is read off a label, and where it can mean two the field asks.
   */
  aim?: DateAim;
  value?: string;
  defaultValue?: string;
  /** The text and what it reads as; `undefined` while it does not read as a date. */
  onChange?: (text: string, reading: TypedDate | undefined) => void;
}

const READ_AS: Record<DateReading['precision'], string> = {
  day: '',
  month: ', the month; no day was given',
  year: ', the year; no month was given',
};

/** A date typed; under it stands what was understood. Where it can mean two, it asks which or offers the other. */
export function DateTextField({ today, order, aim, value, defaultValue = '', onChange, ...rest }: DateTextFieldProps) {
  const say = ({ date, precision }: DateReading) => sayDate(date, { order, precision });
  const [own, setOwn] = useState(defaultValue);
  const text = value ?? own;
  const read = (typed: string) => {
    const reading = readTypedDate(typed, { today, order, aim });
    return reading.ok ? reading.value : undefined;
  };
  const set = (next: string) => {
    setOwn(next);
    onChange?.(next, read(next));
  };

  const reading = readTypedDate(text, { today, order, aim });
  let echo: Echo = null;
  if (!reading.ok) {
    if (reading.error.code !== 'empty') echo = { ok: false, says: sayDateError(reading.error) };
  } else if (reading.value.ambiguous) {
    echo = {
      ok: false,
      says: (
        <>
          <p>This can mean more than one date. Which one is it?</p>
          <div className={styles.chips}>
            {reading.value.ambiguous.map((one) => (
              <button key={say(one)} type="button" className={styles.chip} onClick={() => set(say(one))}>
                {say(one)}
              </button>
            ))}
          </div>
        </>
      ),
    };
  } else {
    const { date, precision, instead } = reading.value;
    const weekday = aim && precision === 'day' ? `${sayWeekday(date)} ` : '';
    const taken = `Reads as ${weekday}${say(reading.value)}${READ_AS[precision]}.`;
    const sayOther = (one: DateReading) => sayDate(one.date, { order, today: date, precision: one.precision });
    echo = {
      ok: true,
      says: instead ? (
        <>
          <p>
            {taken} Or is it {instead.map(sayOther).join(' or ')}?
          </p>
          <div className={styles.chips}>
            {instead.map((one) => (
              <button key={say(one)} type="button" className={styles.chip} onClick={() => set(say(one))}>
                Take {sayOther(one)}
              </button>
            ))}
          </div>
        </>
      ) : (
        taken
      ),
    };
  }
  return <TextField {...rest} value={text} onChange={set} echo={echo} autoCapitalize="off" spellCheck={false} />;
}
