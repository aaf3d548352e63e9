'use client';

import { DateTextField } from '@/app/_ui/field/date-text-field';
import { Key } from '@/app/_ui/keys';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export interface DayItWasProps {
  /** "Weighed on". */
  label: string;
  today: CalendarDate;
  order: DateOrder;
  /** As typed; undefined while it was today. */
  value: string | undefined;
  onChange: (value: string | undefined) => void;
  error?: string;
}

/** Today, unless it is said to have been another day: then a field for that day, beginning with yesterday. */
export function DayItWas({ label, today, order, value, onChange, error }: DayItWasProps) {
  if (value === undefined) {
    return (
      <Key variant="ghost" onClick={() => onChange(sayDate(addDays(today, -1), { order }))}>
        It was on another day
      </Key>
    );
  }
  return (
    <>
      <DateTextField
        label={label}
        hint="It is written today all the same."
        today={today}
        order={order}
        aim="past"
        value={value}
        onChange={onChange}
        error={error}
        autoFocus
      />
      <Key variant="ghost" onClick={() => onChange(undefined)}>
        It was today
      </Key>
    </>
  );
}
