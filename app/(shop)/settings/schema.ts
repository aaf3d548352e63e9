import { z } from 'zod';
import { workshopFields } from '@/app/_server/book/workshop-fields';

export const settingsSchema = z.object({
  ...workshopFields,
  dateOrder: z.enum(['day-first', 'month-first'], 'Choose how typed dates are read.'),
});

export const servingSchema = z.object({ network: z.boolean() });
