import { z } from 'zod';
import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';

/** A whole day as a form sends it, `YYYY-MM-DD`. */
export const wholeDay = z.string().transform((text, context): CalendarDate => {
  const read = parseCalendarDate(text);
  if (read.ok) return read.value;
  context.addIssue({ code: 'custom', message: 'Give one whole day, for example 12 Dec 2026.' });
  return z.NEVER;
});
