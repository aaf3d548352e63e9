import { z } from 'zod';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/** What is left in a container, as weighed. */
export const weighSchema = z.object({
  label: z.string({ error: 'A weighing needs the label of a container.' }).transform((text, context) => {
    const label = parseOwnLabel(text);
    if (label.ok && label.value.kind === 'container') return label.value.code;
    context.addIssue('The label of a container is a C, a dash and six letters or digits, like C-4K7QM2.');
    return z.NEVER;
  }),
  left: z
    .number({ error: 'What is left is a whole number of the small unit.' })
    .int('What is left is a whole number of the small unit.')
    .min(0, 'What is left is not below nothing.'),
  happenedOn: z
    .string()
    .transform((text, context) => {
      const day = parseCalendarDate(text);
      if (day.ok) return day.value;
      context.addIssue('The day it was weighed is written like 2026-12-19.');
      return z.NEVER;
    })
    .optional(),
  why: z.string().trim().max(500, 'Give the reason in at most 500 characters.').default(''),
});
