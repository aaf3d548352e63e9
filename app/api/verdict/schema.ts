import { z } from 'zod';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { PURPOSES } from '@/shared/shelf-life/types/verdict';

const whole = (what: string) =>
  z.coerce
    .number({ error: `${what} is a whole number.` })
    .int(`${what} is a whole number.`)
    .positive(`${what} is 1 or more.`);

/** The question for a verdict, as it stands in the address. */
export const verdictQuery = z.object({
  code: z
    .string({ error: 'A verdict needs a code.' })
    .min(1, 'A verdict needs a code.')
    .max(4096, 'That code is too long.'),
  symbology: z.string().max(3, 'An AIM symbology identifier has three characters.').optional(),
  day: z.string({ error: 'A verdict needs the day of use.' }).transform((text, context) => {
    const day = parseCalendarDate(text);
    if (day.ok) return day.value;
    context.addIssue('The day of use is a date like 2026-12-19.');
    return z.NEVER;
  }),
  purpose: z.enum(PURPOSES, { error: `The purpose is one of ${PURPOSES.join(', ')}.` }).default('client'),
  job: whole('The job').optional(),
  asked: whole('The amount').optional(),
});
