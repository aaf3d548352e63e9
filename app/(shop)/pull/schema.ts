import { z } from 'zod';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { PURPOSES } from '@/shared/shelf-life/types/verdict';

const LONGEST_WORDS = 1000;
const TOO_LONG = 'That is too long. A few sentences will do.';

const words = z.string().trim().max(LONGEST_WORDS, TOO_LONG);
const weight = z.number().int().nonnegative();
const id = z.number().int().positive();

/** A calendar day in its stored form. */
const daySchema = z.string().transform((text, context) => {
  const day = parseCalendarDate(text);
  if (day.ok) return day.value;
  context.addIssue({ code: 'custom', message: 'Type a day, for example 12 Dec 2026.' });
  return z.NEVER;
});

const labelSchema = z.string().transform((text, context) => {
  const label = parseOwnLabel(text);
  if (label.ok) return label.value.code as string;
  context.addIssue({ code: 'custom', message: 'That is none of our own labels.' });
  return z.NEVER;
});

const ask = {
  jobId: id.optional(),
  purpose: z.enum(PURPOSES),
  dayOfUse: daySchema,
  pairedLabel: labelSchema.optional(),
};

/** The question as it stands in the address of `/pull/answer`. */
export const pullQuerySchema = z
  .object({
    code: z.string().min(1).max(5000),
    symbology: z.string().max(4).optional(),
    jobId: z.coerce.number().pipe(id).optional(),
    purpose: ask.purpose,
    dayOfUse: daySchema,
    asked: z.coerce.number().pipe(z.number().int().positive()).optional(),
    pairedLabel: ask.pairedLabel,
  })
  .transform(({ code, symbology, ...rest }) => ({ ...rest, scan: { text: code, symbology } }));

/**
 * A pull: the amount in the product's small unit, the word that was on the screen, the weights it was
 * found by, the day it was taken where that is not today, and an override where there is one.
 */
export const pullSchema = z.object({
  ...ask,
  label: labelSchema,
  asked: z.number().int('Type an amount above zero.').positive('Type an amount above zero.'),
  weighed: z.object({ beforeMg: weight.optional(), afterMg: weight }).optional(),
  happenedOn: daySchema.optional(),
  seen: z.enum(['use', 'care', 'stop']),
  override: z
    .object({ reason: words.min(1, 'Write why it is used anyway, in a few words.'), inspectionId: id })
    .optional(),
});

export const testPourSchema = z.object({
  label: labelSchema,
  madeOn: daySchema,
  passed: z.boolean('Say whether it passed.'),
  method: words,
  note: words,
  photo: z.instanceof(File).optional(),
});

export const pieceSchema = z.object({
  label: labelSchema,
  act: z.enum(['promise', 'take', 'free']),
  jobId: id.optional(),
});

export const keySchema = z.string().regex(/^[\w-]{8,64}$/);
