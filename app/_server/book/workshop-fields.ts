import { z } from 'zod';
import { isTimeZone } from '@/shared/calendar/date-in';

/** The fields of a workshop that its beginning and its settings share. */
export const workshopFields = {
  name: z
    .string()
    .trim()
    .min(1, 'Give the workshop a name. It stands on the pages and the labels.')
    .max(80, 'Give a name of at most 80 characters.'),
  timeZone: z
    .string()
    .max(60)
    .refine(isTimeZone, 'This computer does not know that time zone. Choose another near it.'),
  units: z.enum(['metric', 'imperial'], 'Choose metric or inches.'),
};
