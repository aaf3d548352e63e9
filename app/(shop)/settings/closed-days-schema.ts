import { z } from 'zod';
import { wholeDay } from '@/app/(shop)/_parts/whole-day';

export const closedDaysSchema = z.object({
  from: wholeDay,
  to: wholeDay,
  name: z.string().trim().max(120, 'That name is too long.'),
});

export const closedWeekdaysSchema = z.object({ weekdays: z.array(z.number().int().min(0).max(6)).max(7) });

export const closedSchema = z.object({ id: z.number().int().positive() });
