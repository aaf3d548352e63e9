import { z } from 'zod';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { PURPOSES } from '@/shared/shelf-life/types/verdict';

const day = z.string().transform((text, context) => {
  const read = parseCalendarDate(text);
  if (read.ok) return read.value;
  context.addIssue({ code: 'custom', message: 'Type the day it is needed, for example 12 Dec 2026.' });
  return z.NEVER;
});

const fields = {
  name: z.string().trim().min(1, 'Give the job a name, for example River desk.').max(120, 'That name is too long.'),
  purpose: z.enum(PURPOSES, 'Say whose piece it is.'),
  client: z.string().trim().max(120, 'That name is too long.'),
  dayOfUse: day,
  note: z.string().trim().max(2000, 'That is too long for a note.'),
  dueOn: day.nullable().optional(),
  contact: z.string().trim().max(300, 'That is too long.').optional(),
};

/** A new job. */
export const jobSchema = z.object({
  ...fields,
  stage: z.enum(['asked', 'quoted', 'agreed'], 'Say where it stands.').optional(),
});

/** A job changed, beside the job as the form was opened on it. */
export const changeJobSchema = z.object({ ...fields, jobId: z.number().int().positive(), was: z.object(fields) });
