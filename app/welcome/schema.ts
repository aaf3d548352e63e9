import { z } from 'zod';
import { workshopFields } from '@/app/_server/book/workshop-fields';
import { readCurrency } from '@/shared/units/currency';

export const setUpSchema = z.object({
  ...workshopFields,
  currency: z
    .string()
    .max(3)
    .refine((text) => readCurrency(text).ok, 'Choose the currency you pay for material in.'),
});

export const demoSchema = z.object({});
