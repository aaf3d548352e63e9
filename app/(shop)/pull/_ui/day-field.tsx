'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { TypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';

export type DayFieldProps = {
  label: string;
  hint?: string;
  error?: string;
  /** The day it opens with. */
  first: CalendarDate;
  today: CalendarDate;
  order: DateOrder;
  /** The day that is typed; undefined while it can mean none or more than one. */
  onDay: (day: CalendarDate | undefined) => void;
};

/** One whole day, typed. A month or a year alone is not a day of use. */
export function DayField({ first, today, order, onDay, ...words }: DayFieldProps) {
  const [text, setText] = useState(sayDate(first, { order }));
  const take = (typed: string, reading: TypedDate | undefined) => {
    setText(typed);
    onDay(reading && !reading.ambiguous && reading.precision === 'day' ? reading.date : undefined);
  };
  return <DateTextField {...words} today={today} order={order} aim="ahead" value={text} onChange={take} />;
}
